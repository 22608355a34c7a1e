/** Accessibility rules run inside a page by evaluation, which the pages' policy does not hinder. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

export const AXE_SOURCE = axe.source;

/** Runs the WCAG 2.2 A and AA rules; gives one line a violation. */
export const AXE_RUN = `
  axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then(
    ({ violations }) => violations.flatMap((rule) =>
      rule.nodes.map((node) => rule.id + ': ' + node.html.slice(0, 160) + ' ' + node.failureSummary)))
`;

/** Violations on a page of Chromium, one line each. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE_SOURCE);
  return page.evaluate(AXE_RUN);
}
