/** A sentence is found by a search in either language, quoted in a finding, and read by a specialist once it was sent. */
import { expect, test, type Page } from '@playwright/test';
import { chooseLanguage } from './device.ts';
import { joinLead } from './every-place.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const openWords = async (page: Page, project: string) => {
  await page.goto(`${hub.url}${project}/words`);
  await page.getByRole('region', { name: /^(Remarks|留言)$/ }).waitFor();
};

test('a sentence is found by its stem and quoted in a new finding, and the quote leads to its run', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await page.goto(`${hub.url}${project}/testers`);
  await page.getByRole('link', { name: 'What testers say' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^\d+ remarks from \d+ testers/);

  await page.getByRole('searchbox', { name: 'Search the words' }).fill('tongues');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/testers mention “tongues”\.$/);
  await expect(page).toHaveURL(/\?q=tongues$/);
  const remarks = page.getByRole('region', { name: 'Remarks' });
  await expect(remarks.locator('mark').first()).toHaveText(/^(tongue|鞋舌)$/i);
  // The address alone shows the same.
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/mention “tongues”\.$/);

  const first = remarks.getByRole('listitem').first();
  const words = await first.locator('q').innerText();
  await first.getByRole('checkbox').check();
  const into = page.getByRole('region', { name: 'Quote into a finding' });
  await into.getByRole('button', { name: 'Quote 1 remark' }).click();
  await expect(into.getByText('Give the finding a title.')).toBeVisible();
  await into.getByLabel('Title of the finding').fill('The tongue wanders');
  await into.getByRole('button', { name: 'Quote 1 remark' }).click();
  await first.getByRole('link', { name: 'quoted in “The tongue wanders”' }).click();

  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The tongue wanders');
  const quotes = page.getByRole('region', { name: 'What testers say of it' });
  await expect(quotes.locator('q')).toHaveText(words);
  await expect(quotes.getByText('Only leads read it.')).toBeVisible();
  await quotes.getByRole('button', { name: 'Send to specialists' }).click();
  await expect(page.getByText(/Report files that were sent keep what they held\.$/)).toBeVisible();
  await expect(
    quotes.getByText(/^Specialists can read it since|Specialists can read it since/),
  ).toBeVisible();
  // Undone, and the quote is the leads' own again.
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(quotes.getByText('Only leads read it.')).toBeVisible();
  await quotes.getByRole('link', { name: /\d/ }).first().click();
  await expect(page.locator('main')).toContainText(words);
});

test('a Chinese sentence is found and quoted in a finding that is there', async ({ page }) => {
  const project = await joinLead(page, hub);
  await page.goto(`${hub.url}/settings`);
  await chooseLanguage(page, '简体中文');
  await openWords(page, project);
  await page.getByRole('searchbox', { name: '搜索留言' }).fill('后跟打滑');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('1 名试穿员提到“后跟打滑”。');
  const first = page.getByRole('region', { name: '留言' }).getByRole('listitem').first();
  await expect(first.locator('mark').first()).toHaveText(/后跟/);
  await first.getByRole('checkbox').check();
  const into = page.getByRole('region', { name: '引用到问题项' });
  await into.getByLabel('问题项', { exact: true }).selectOption({ index: 1 });
  await into.getByRole('button', { name: '引用 1 条留言' }).click();
  await expect(first.getByRole('link', { name: /^已引用于/ })).toBeVisible();
  await page.getByRole('button', { name: '撤销' }).click();
  await expect(first.getByRole('link', { name: /^已引用于/ })).toHaveCount(0);
});

test('what nobody tapped is asked about, left alone on this device, and asked again after an undo', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await page.goto(`${hub.url}${project}/words?untapped=1&q=numb`);
  const perhaps = page.getByText(/^Perhaps also numbness/);
  await perhaps.first().waitFor();
  const before = await perhaps.count();
  await page.getByRole('button', { name: 'No, leave it' }).first().click();
  await expect(perhaps).toHaveCount(before - 1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(perhaps).toHaveCount(before);
  // Marked for later, and found by that.
  await page.goto(`${hub.url}${project}/words?q=numb`);
  const first = page.getByRole('region', { name: 'Remarks' }).getByRole('listitem').first();
  await first.getByRole('checkbox').check();
  await page.getByRole('button', { name: 'Mark them' }).click();
  await expect(page.getByText('1 remark marked')).toBeVisible();
  await page.goto(`${hub.url}${project}/words?marked=1`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^1 of \d+ remarks fit/);
});

test('one sentence of a remark is quoted, and a press on a bar shows what was said at those kilometres', async ({
  page,
}) => {
  const project = await joinLead(page, hub);
  await openWords(page, project);
  const bars = page.getByRole('group', { name: /^On the pair before/ });
  const bar = bars.getByRole('button').first();
  const said = await bar.getAttribute('aria-label');
  await bar.click();
  await expect(bar).toHaveAttribute('aria-pressed', 'true');
  await expect(page).toHaveURL(/\?from=0&to=\d+$/);
  const count = /: (\d+) remark/.exec(said ?? '')?.[1] ?? '?';
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(new RegExp(`^${count} of `));
  await bar.click();
  await expect(page).toHaveURL(/words$/);

  // The demo's first remark of more than one sentence.
  const remarks = page.getByRole('region', { name: 'Remarks' });
  await page.getByRole('button', { name: /^Show \d+ more/ }).click();
  const long = remarks
    .locator('.remark')
    .filter({ has: page.locator('q', { hasText: /[.!?] \p{Lu}/u }) })
    .first();
  await long.getByRole('checkbox').check();
  const choice = long.getByRole('group', { name: 'What to quote' });
  const second = choice.getByRole('radio').nth(2);
  const sentence = (await choice.locator('label').nth(2).innerText()).trim();
  await second.check();
  const into = page.getByRole('region', { name: 'Quote into a finding' });
  await into.getByLabel('Title of the finding').fill('One sentence');
  await into.getByRole('button', { name: 'Quote 1 remark' }).click();
  await long.getByRole('link', { name: 'quoted in “One sentence”' }).click();
  const quotes = page.getByRole('region', { name: 'What testers say of it' });
  await expect(quotes.locator('q')).toHaveText(sentence);
  await expect(quotes.getByText('These words were changed since.')).toHaveCount(0);
});
