// SPDX-License-Identifier: MIT
// How long the page's own thread is busy at a stretch on a phone with a processor four times slower than this one: the
// processor's time of each task, so that what else runs on the machine does not count, times four. For docs/page.md, never
// asserted.
//   sh tests/page/figures.sh PROGRAM
import { done, hosted, with_browser, with_demo, with_page } from "./browser.mjs";

const slower = 4;

/** Whether a task takes in the driver's own script, some 330 kB, which no phone does. */
const drivers = (event) => event.args?.chrome_mojo_event_info?.data_num_bytes > 100_000 && /DevTools/.test(event.args.chrome_mojo_event_info.mojo_interface_tag ?? "");

/** Processor time of the tasks of the thread that lays out, in milliseconds, the longest first. */
function tasks_of(events) {
    const thread = ({ pid, tid }) => `${pid}:${tid}`, count = new Map();
    for (const event of events)
        if (event.name === "Layout") count.set(thread(event), (count.get(thread(event)) ?? 0) + 1);
    const own = [...count].sort(([, a], [, b]) => b - a)[0]?.[0];
    const foreign = events.filter((event) => thread(event) === own && drivers(event)).map(({ ts }) => ts);
    const by_driver = ({ ts, dur }) => foreign.some((at) => at >= ts && at <= ts + dur);
    return events.filter((event) => event.name === "ThreadControllerImpl::RunTask" && event.tdur && thread(event) === own && !by_driver(event)).map(({ tdur }) => tdur / 1000).sort((a, b) => b - a);
}
async function tasks_while(browser, page, work) {
    await browser.startTracing(page, { categories: ["devtools.timeline", "toplevel"] });
    await work();
    await done(page);
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    return tasks_of(JSON.parse((await browser.stopTracing()).toString()).traceEvents);
}
/** Each resolves when the page shows what was asked for; it is asked from within, so that the driver costs nothing. */
const deeds = {
    "the plan": () => new Promise((shown) => {
        location.hash = "plan";
        new MutationObserver((_, me) => document.querySelector("#sheet .spots") && (me.disconnect(), shown())).observe(document.getElementById("sheet"), { subtree: true, childList: true });
    }),
    "a note chosen": () => document.querySelector("#watched button").click(),
    "a note moved": () => new Promise((shown) => {
        new MutationObserver((_, me) => document.getElementById("moved-by") && (me.disconnect(), shown())).observe(document.getElementById("note"), { subtree: true, childList: true });
        document.getElementById("move-up").click();
    }),
    "the sheet that says why": () => document.querySelector('[data-view="sheet"]').click(),
    "the sheet in sight": () => document.getElementById("sheet").scrollIntoView(),
    "the sheet, scrolled": () => { scrollBy(0, 6000); },
    "the plan as a list": () => { document.getElementById("d-list").open = true; },
    "the plan by vowels": () => { document.getElementById("d-strips").open = true; },
    "what is heard": () => { location.hash = "hear"; },
    "what is practised": () => { location.hash = "practise"; },
    "voices compared": () => { location.hash = "voices"; },
    "back to the plan": () => { location.hash = "plan"; },
};

await with_browser(async (browser) => {
    const host = await hosted(); // phones have the page from a host
    await with_page(browser, async (page) => {
        const tell = async (name, work) => {
            const [longest] = await tasks_while(browser, page, work);
            console.log(`longest task, ${name}`.padEnd(64), `${(slower * longest).toFixed(0)} ms`);
        };
        await tell("the page opened", async () => {
            await page.reload();
            await page.waitForSelector("html[data-ready]", { state: "attached" });
        });
        await with_demo(page);
        for (const [name, deed] of Object.entries(deeds)) await tell(name, () => page.evaluate(deed));
    }, { viewport: { width: 360, height: 740 }, url: host.url });
    host.close();
}, ["--mute-audio"]); // a browser of its own: its trace has no other page
