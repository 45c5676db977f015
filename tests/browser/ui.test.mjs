// The page, used in a browser as its users use it.
//
//     ELBOWROOM=http://127.0.0.1:8080 PACKAGES=FOLDER SCREENSHOTS=FOLDER node --test tests/browser/

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { answered, inaccessible, launch, open, overflows, packages } from "./support.mjs";

const base = process.env.ELBOWROOM;
const screenshots = process.env.SCREENSHOTS;
const { chromium, axe } = packages(process.env.PACKAGES);
const phone = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 };
let browser;

before(async () => {
  mkdirSync(screenshots, { recursive: true });
  browser = await launch(chromium);
});

after(() => browser.close());

/** Runs a test on a page of its own, on which nothing may have gone wrong at the end. */
function onPage(name, options, work) {
  test(name, { timeout: 120_000 }, async () => {
    const opened = await open(browser, base, options);
    try {
      await answered(opened.page);
      await work(opened.page);
      assert.deepEqual(opened.faults, []);
    } finally {
      await opened.context.close();
    }
  });
}

const shot = (page, name) => page.screenshot({ path: `${screenshots}/${name}.png`, fullPage: true });
const verdict = (page) => page.locator("#answer-body .verdict").innerText();
const json = async (path, init) => (await fetch(base + path, init)).json();

/** Chooses a check and an example, and waits until its own answer is there. */
async function choose(page, check, example) {
  const settled = async (act) => {
    const reply = page.waitForResponse((response) => response.request().method() === "POST" && response.headers()["content-type"].includes("json"));
    await act();
    await reply;
    await answered(page);
  };
  if ((await page.locator("#check").inputValue()) !== check) await settled(() => page.selectOption("#check", check));
  if (example && (await page.locator("#example").inputValue()) !== example) await settled(() => page.selectOption("#example", example));
}

/** Has the request evaluated, and waits until something comes back. */
async function evaluate(page) {
  const isAnswer = (response) => response.request().method() === "POST" && response.headers()["content-type"].includes("json");
  await Promise.all([page.waitForResponse(isAnswer), page.getByRole("button", { name: "Evaluate" }).click()]);
}

onPage("every example of every check is answered, drawn and put in the form without loss", {}, async (page) => {
  const { checks } = await json("/v1/checks");
  let seen = 0;
  for (const check of checks) {
    const { requests } = await json(`/v1/checks/${check.name}`);
    for (const example of requests) {
      await choose(page, check.name, example.name);
      const request = { ...example.request };
      request.edition ??= "2023";
      const answer = await json(check.path, { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(request) });
      const text = { complies: "Complies", violates: "Violates", not_determined: "Not determined" }[answer.verdict] ?? "Sizing question, no verdict";
      assert.equal((await verdict(page)).trim(), text, `${check.name}/${example.name}`);
      assert.equal(await page.locator("#answer-body .picture svg title").count() > 0, check.drawn, `${check.name}/${example.name}`);
      assert.equal(await page.locator("#proof .steps > li").count(), answer.derivation.steps.length);
      // the form holds the request: nothing is lost on the way through it
      await page.click("#tab-json");
      assert.deepEqual(JSON.parse(await page.inputValue("#json")), request, `${check.name}/${example.name}`);
      await page.click("#tab-form");
      seen += 1;
    }
    await shot(page, `check-${check.name}`);
  }
  assert.ok(seen >= 30, `${seen}`);
});

onPage("by keyboard alone: skip to the work, change a field, evaluate, walk the proof", {}, async (page) => {
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.className), "skip");
  await page.keyboard.press("Enter");
  assert.equal(await page.evaluate(() => document.activeElement.id), "work");
  await choose(page, "outlet_box_fill", "which-box");
  await page.focus("#check");
  // on to the first text of the form, with nothing but the tabulator
  for (let presses = 0; presses < 40; presses += 1) {
    await page.keyboard.press("Tab");
    if (await page.evaluate(() => document.activeElement.matches("#panel-form input[type=text]"))) break;
  }
  assert.ok(await page.evaluate(() => document.activeElement.matches("#panel-form input[type=text]")));
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
  assert.notEqual(outline, "none", "what has the focus is marked");
  const reply = page.waitForResponse((response) => response.url().includes("/v1/outlet-boxes/fill"));
  await page.keyboard.press("Control+Enter");
  await reply;
  await answered(page);
  await page.focus("#proof summary");
  await page.keyboard.press("Enter");
  const next = page.getByRole("button", { name: "Next step" });
  await next.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  assert.match(await page.locator("#proof .walk [role=status]").innerText(), /^Step 2 of \d+$/);
  assert.equal(await page.locator("#proof li[aria-current=step]").getAttribute("id"), "step-s2");
});

onPage("parts are added, filled in and removed; a fault is told at its field", {}, async (page) => {
  await choose(page, "outlet_box_fill", "which-box");
  const before = await page.locator("#panel-form fieldset").count();
  await page.selectOption("[id='add/contents']", "terminal_blocks");
  await page.getByRole("button", { name: "Add: Terminal blocks", exact: true }).click();
  assert.ok((await page.locator("#panel-form fieldset").count()) > before);
  await evaluate(page);
  await answered(page);
  const size = page.locator("#panel-form input[id^='field/contents'][id$='size']").first();
  await size.fill("99 AWG");
  await page.getByRole("button", { name: "Evaluate" }).click();
  await page.waitForSelector("#problem:not([hidden])");
  const faulty = page.locator("#panel-form [aria-invalid=true]");
  assert.equal(await faulty.count(), 1);
  const told = await faulty.getAttribute("aria-describedby");
  assert.match(await page.locator(`[id='${told.split(" ").at(-1)}']`).innerText(), /99 AWG/);
  await shot(page, "fault");
  await page.locator("#problem button").first().click();
  assert.equal(await page.evaluate(() => document.activeElement.getAttribute("aria-invalid")), "true");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("12 AWG");
  await page.getByRole("button", { name: "Evaluate" }).click();
  await answered(page);
  assert.ok(await page.locator("#problem").isHidden());
});

onPage("JSON that is pasted is evaluated and becomes the form; text that is none is said to be none", {}, async (page) => {
  await choose(page, "raceway_fill");
  const request = { edition: "2020", raceway: { kind: "EMT", trade_size: "3/4" }, conductors: [{ insulation: "THHN", size: "10 AWG", count: 7 }] };
  await page.click("#tab-json");
  await page.fill("#json", JSON.stringify(request));
  await evaluate(page);
  await page.fill("#json", "{ not json");
  await page.click("#tab-form");
  await page.waitForSelector("#problem:not([hidden])");
  assert.ok(await page.locator("#panel-json").isVisible(), "the text is not lost");
  await page.fill("#json", JSON.stringify(request));
  await page.click("#tab-form");
  assert.ok(await page.locator("#panel-form").isVisible());
  assert.ok(await page.locator("input[name=edition][value='2020']").isChecked());
});

onPage("another edition is a switch away, and what changes is shown with its cause", {}, async (page) => {
  await choose(page, "outlet_box_fill", "which-box");
  await page.click("#tab-json");
  const grounding = { edition: "2023", enclosure: { standard: "square-4x1-1/2" }, contents: { conductors: [{ size: "12 AWG", role: "spliced", count: 4 }], grounding: [{ size: "12 AWG", kind: "equipment_grounding", count: 6 }] } };
  await page.fill("#json", JSON.stringify(grounding));
  await evaluate(page);
  const required = () => page.locator("#answer-body dl dd").nth(1).innerText();
  await page.waitForFunction(() => document.querySelector("#answer-body dl")?.innerText.includes("12.375 in³"));
  await page.check("input[name=edition][value='2017']");
  await page.waitForFunction(() => document.querySelector("#answer-body dl")?.innerText.includes("11.25 in³"));
  assert.match(await required(), /11\.25 in³/);
  await page.click("#other-editions summary");
  await page.waitForSelector("#other-editions table");
  const told = await page.locator("#other-editions").innerText();
  assert.match(told, /What changes from 2017 to 2023/);
  assert.match(told, /12\.375 in³/);
  assert.match(told, /Grounding conductors/);
  await shot(page, "editions");
});

onPage("the request that is copied as curl is answered with the same verdict", {}, async (page) => {
  await choose(page, "pull_box_size", "violates");
  await page.click("#copy-curl");
  const command = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(command.startsWith("curl ") && !command.includes("Authorization"), command);
  const answer = JSON.parse(execFileSync("bash", ["-c", command], { encoding: "utf8" }));
  assert.equal(answer.verdict, "violates");
  assert.equal((await verdict(page)).trim(), "Violates");
});

onPage("a certificate is saved, verified, and found altered where it was altered", {}, async (page) => {
  await choose(page, "outlet_box_fill", "short-box");
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#certificate-save")]);
  const path = await download.path();
  const certificate = JSON.parse(readFileSync(path, "utf8"));
  await page.click(".plate a[href='#certificate']");
  await page.setInputFiles("#certificate-file", path);
  await page.getByRole("button", { name: "Verify" }).click();
  await page.waitForSelector("#verified .verdict");
  assert.equal((await page.locator("#verified .verdict").innerText()).trim(), "Reproduced to the byte");
  certificate.answer.verdict = "complies";
  await page.setInputFiles("#certificate-file", []);
  await page.fill("#certificate-text", JSON.stringify(certificate));
  await page.getByRole("button", { name: "Verify" }).click();
  await page.waitForFunction(() => document.querySelector("#verified .verdict")?.innerText.trim() === "Altered");
  assert.match(await page.locator("#verified").innerText(), /\/answer\/verdict/);
  assert.deepEqual(await inaccessible(page, axe), []);
  await shot(page, "certificate-altered");
});

onPage("the printable page of a certificate opens with its drawing and its style, and can be verified as saved", {}, async (page) => {
  await choose(page, "outlet_box_fill", "short-box");
  const [popup] = await Promise.all([page.context().waitForEvent("page"), page.click("#certificate-page")]);
  await popup.waitForSelector("svg");
  assert.equal(await popup.evaluate(() => [...document.styleSheets].length >= 1), true);
  await popup.screenshot({ path: `${screenshots}/certificate-page.png`, fullPage: true });
  const html = await popup.content();
  await page.click(".plate a[href='#certificate']");
  await page.fill("#certificate-text", html);
  await page.getByRole("button", { name: "Verify" }).click();
  await page.waitForSelector("#verified .verdict");
  assert.equal((await page.locator("#verified .verdict").innerText()).trim(), "Reproduced to the byte");
});

onPage("the self-audit runs the published cases and shows the source of each", {}, async (page) => {
  await page.click(".plate a[href='#audit']");
  await page.getByRole("button", { name: "Run" }).click();
  await page.waitForSelector("#audited .verdict", { timeout: 60_000 });
  assert.equal((await page.locator("#audited .verdict").innerText()).trim(), "Every figure agrees");
  const { summary } = await json("/v1/self-audit?basis=published");
  assert.equal(await page.locator("#audit-cases details").count(), summary.cases);
  await page.locator("#audit-cases summary").first().click();
  await page.waitForSelector("#audit-cases table");
  assert.match(await page.locator("#audit-cases details").first().innerText(), /Published/);
  assert.deepEqual(await inaccessible(page, axe), []);
  await page.screenshot({ path: `${screenshots}/audit.png` });
});

onPage("an audit that finds something shows what differs and what was refused", {}, async (page) => {
  const audit = await json("/v1/self-audit?check=raceway_fill&basis=published&edition=2023");
  const [differs, refused] = audit.cases;
  Object.assign(differs.evaluations[0], { agrees: false });
  Object.assign(differs.evaluations[0].values[0], { agrees: false, expected: null });
  refused.evaluations = [{ edition: "2023", agrees: false, refused: "/units: cubits", values: [] }];
  Object.assign(audit, { cases: [differs, refused] });
  Object.assign(audit.summary, { differing: 2 });
  await page.route("**/v1/self-audit*", (route) => route.fulfill({ contentType: "application/json", body: JSON.stringify(audit) }));
  await page.click(".plate a[href='#audit']");
  await page.getByRole("button", { name: "Run" }).click();
  await page.waitForSelector("#audited .verdict");
  assert.equal((await page.locator("#audited .verdict").innerText()).trim(), "Evaluations that differ: 2");
  for (const place of [0, 1]) await page.locator("#audit-cases summary").nth(place).click();
  await page.locator("#audit-cases tr.changed", { hasText: "null" }).waitFor();
  await page.locator("#audit-cases", { hasText: "cubits" }).waitFor();
});

for (const [name, options] of Object.entries({
  light: { colorScheme: "light" },
  dark: { colorScheme: "dark" },
  "forced-colors": { forcedColors: "active" },
  spanish: { path: "/?language=es" },
  phone,
  "phone-dark-spanish": { ...phone, colorScheme: "dark", path: "/?language=es" },
})) {
  onPage(`nothing is inaccessible and nothing runs off the page: ${name}`, options, async (page) => {
    await choose(page, "pull_box_size", "violates");
    await page.click("#proof summary");
    assert.deepEqual(await inaccessible(page, axe), []);
    assert.equal(await overflows(page), false);
    await page.click("#proof summary");
    await shot(page, name);
  });
}

test("where a key is asked for the page begins once one is entered, and does not put it into what is copied", { timeout: 60_000 }, async () => {
  const context = await browser.newContext({ permissions: ["clipboard-read", "clipboard-write"] });
  const refused = { type: "/v1/problems/unauthorized", title: "No key", status: 401, detail: "This service asks for a key." };
  await context.route("**/v1/**", (route) => {
    if (route.request().headers().authorization === "Bearer a-key-of-mine") return route.continue();
    return route.fulfill({ status: 401, contentType: "application/problem+json", body: JSON.stringify(refused) });
  });
  const page = await context.newPage();
  await page.goto(base);
  await page.waitForSelector("#problem:not([hidden])");
  assert.match(await page.locator("#problem").innerText(), /asks for a key/);
  assert.ok(await page.locator("#token").isVisible(), "the field for the key is open");
  await page.getByRole("button", { name: "Evaluate" }).click();
  await page.fill("#token", "a-key-of-mine");
  await page.keyboard.press("Tab");
  await answered(page);
  assert.ok(await page.locator("#problem").isHidden());
  await page.click("#copy-curl");
  assert.doesNotMatch(await page.evaluate(() => navigator.clipboard.readText()), /a-key-of-mine|Authorization/);
  await context.close();
});

test("the page says that it cannot reach the service, and keeps what was filled in", { timeout: 60_000 }, async () => {
  const { context, page } = await open(browser, base);
  await answered(page);
  await page.fill("[id='field/reference']", "attic-9");
  await context.setOffline(true);
  await page.getByRole("button", { name: "Evaluate" }).click();
  await page.waitForSelector("#problem:not([hidden])");
  assert.match(await page.locator("#problem").innerText(), /cannot be reached/);
  assert.equal(await page.inputValue("[id='field/reference']"), "attic-9");
  await context.close();
});

test("a phone with a slow processor shows a first answer, from nothing, with little to load", { timeout: 60_000 }, async () => {
  const context = await browser.newContext(phone);
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await session.send("Network.enable");
  let bytes = 0;
  session.on("Network.loadingFinished", (finished) => (bytes += finished.encodedDataLength));
  const began = Date.now();
  await page.goto(base);
  await answered(page);
  const took = Date.now() - began;
  await page.waitForTimeout(100);
  console.log(`a quarter of the processor: ${took} ms to the first answer, ${Math.round(bytes / 1024)} KiB`);
  // what a time is worth depends on the machine; what is loaded does not
  assert.ok(bytes > 10_000 && bytes < 250_000, `${bytes} bytes`);
  await context.close();
});
