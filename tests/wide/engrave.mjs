// SPDX-License-Identifier: MIT
// node engrave.mjs OUT SCORE..: engraves the scores with an independent library (verovio) to SVG, one file a page.
// Fails when a score does not load, has no page, or draws fewer of its marks, under the words or over the notes, than
// it has. A score may need none; those are counted, and if no score has any that fails.
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
let failures = 0, pages = 0, plain = 0;
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
  const ours = /name="vowelway"[^>]*><syllabic>single<\/syllabic><text>([^<]*)<|id="vowelway-[^"]*"><direction-type><words[^>]*>([^<]*)</g;
  for (const [, ipa, words] of text.matchAll(ours)) wanted.set(ipa ?? words, (wanted.get(ipa ?? words) ?? 0) + 1);
  if (wanted.size === 0) ++plain;
  for (const [ipa, count_wanted] of wanted) {
    const found = drawn.split(`>${ipa}<`).length - 1;
    if (found < count_wanted) fail(`draws ${ipa} ${found} times instead of ${count_wanted}`);
  }
}
console.log(`${scores.length} scores engraved on ${pages} pages, ${plain} scores without marks, ${failures} failures`);
process.exit(failures > 0 || plain === scores.length ? 1 : 0);
