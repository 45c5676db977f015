// What the tests of the page share: a browser, and what is expected of every page that it shows.

import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

// A browser that looks for nothing beyond the page that it is given.
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

/** The packages of a folder with node_modules: the driver of the browser, and the rules of accessibility. */
export function packages(folder) {
  const require = createRequire(`${folder}/`);
  return { chromium: require("playwright-core").chromium, axe: readFileSync(require.resolve("axe-core"), "utf8") };
}

export function launch(chromium) {
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS });
}

/**
 * A page of the service on which nothing may go wrong: no error, nothing that its policy refused, no file from elsewhere. What
 * did go wrong is in `faults`.
 */
export async function open(browser, base, { path = "/", ...options } = {}) {
  const context = await browser.newContext({ permissions: ["clipboard-read", "clipboard-write"], ...options });
  const page = await context.newPage();
  const faults = [];
  page.on("pageerror", (error) => faults.push(`error: ${error.message}`));
  page.on("console", (message) => {
    // a refused request is an answer that some tests ask for
    const isRefusal = message.text().startsWith("Failed to load resource");
    if (["error", "warning"].includes(message.type()) && !isRefusal) faults.push(`console: ${message.text()}`);
  });
  page.on("request", (request) => {
    const { url } = { url: request.url() };
    if (!url.startsWith(base) && !url.startsWith("blob:") && !url.startsWith("data:")) faults.push(`elsewhere: ${url}`);
  });
  await page.goto(base + path);
  return { context, page, faults };
}

/** Waits until an answer to the newest question stands there. */
export async function answered(page) {
  await page.waitForSelector("#answer[aria-busy=false] #answer-body .verdict");
}

/** What the rules of accessibility (WCAG 2.2 A and AA, and best practices) find wrong with what is shown now. */
export async function inaccessible(page, axe) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run(document));
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(" ")).slice(0, 4).join(", ")}`);
}

/** Whether the page is wider than the window, so that one would have to scroll sideways. */
export const overflows = (page) => page.evaluate(() => document.documentElement.scrollWidth > innerWidth + 1);
