// SPDX-License-Identifier: MIT
// node engrave.mjs OUT SCORE..: engraves the scores with an independent library (verovio) to SVG, one file a page.
// Fails when a score does not load, has no page, draws fewer marks than it has, or draws an error.
import fs from 'node:fs';
import path from 'node:path';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const [out, ...scores] = process.argv.slice(2);
const require = createRequire(path.join(process.cwd(), 'here.js'));
const load = async (name) => import(pathToFileURL(require.resolve(name)));
const { default: createModule } = await load('verovio/wasm');
const { VerovioToolkit } = await import(pathToFileURL(require.resolve('verovio/esm').replace(/\.cjs$/, '.mjs')));
const toolkit = new VerovioToolkit(await createModule());
toolkit.setOptions({ pageWidth: 2100, pageHeight: 2970, scale: 40 });

fs.mkdirSync(out, { recursive: true });
let failures = 0, pages = 0;
for (const file of scores) {
  const text = fs.readFileSync(file, 'utf8');
  const name = path.basename(file, '.musicxml');
  const fail = (why) => { console.error(`${name}: ${why}`); ++failures; };
  if (!toolkit.loadData(text)) { fail('does not load'); continue; }
  const count = toolkit.getPageCount();
  if (count < 1) { fail('has no page'); continue; }
  let drawn = '';
  for (let page = 1; page <= count; ++page) {
    const svg = toolkit.renderToSVG(page);
    fs.writeFileSync(path.join(out, `${name}.${page}.svg`), svg);
    drawn += svg;
    ++pages;
  }
  // Every text of ours is drawn at least as often as it stands in the score.
  const wanted = new Map();
  for (const [, ipa] of text.matchAll(/name="vowelway"><syllabic>single<\/syllabic><text>([^<]*)</g)) wanted.set(ipa, (wanted.get(ipa) ?? 0) + 1);
  if (wanted.size === 0) fail('has no marks');
  for (const [ipa, count_wanted] of wanted) {
    const found = drawn.split(`>${ipa}<`).length - 1;
    if (found < count_wanted) fail(`draws ${ipa} ${found} times instead of ${count_wanted}`);
  }
}
console.log(`${scores.length} scores engraved on ${pages} pages, ${failures} failures`);
process.exit(failures > 0 || scores.length === 0 ? 1 : 0);
