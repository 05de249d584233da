/** A limit of the brief reads as a sentence: nothing of it is cut at any width, in either language. */
import { expect, test, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { chooseLanguage } from './device.ts';
import { startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.afterEach(() => hub.stop());

/** Choices whose longest option is wider than the box that shows it, with what a page of this width hides. */
const cut = (page: Page) =>
  page.locator('form select').evaluateAll((selects) => {
    const pen = document.createElement('canvas').getContext('2d') as CanvasRenderingContext2D;
    return (selects as HTMLSelectElement[]).flatMap((select) => {
      const style = getComputedStyle(select);
      pen.font = style.font;
      const room =
        select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
      const words = [...select.options]
        .map(({ text }) => text)
        .filter((text) => pen.measureText(text).width > room + 1);
      const edge = select.getBoundingClientRect().right;
      return edge > document.documentElement.clientWidth ? [...words, 'outside'] : words;
    });
  });

test('a limit is one sentence, its site is chosen by name or typed, and nothing is cut', async ({
  page,
}) => {
  test.setTimeout(120_000);
  hub = await startHubProcess();
  await page.goto(`${hub.url}/join#${hub.codes.lead}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByRole('link', { name: 'Write the brief' }).waitFor();
  for (const chinese of [false, true]) {
    if (chinese) {
      await page.goto(`${hub.url}/settings`);
      await chooseLanguage(page, '简体中文');
    }
    await page.goto(`${hub.url}/desk/new`);
    await page.getByRole('button', { name: chinese ? '再加一项限值' : 'One more limit' }).click();
    const row = page.getByRole('group', { name: chinese ? '限值 1' : 'Limit 1' });
    await expect(row.getByRole('combobox', { name: chinese ? '部位' : 'Site' })).toHaveValue(
      'heel-centre',
    );
    for (const width of [320, 390, 768, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await cut(page), `${width}`).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
    }
    expect(await axeFaults(page)).toEqual([]);
  }
  const row = page.getByRole('group', { name: '限值 1' });
  await row.getByRole('combobox', { name: '指标' }).selectOption('重量');
  await expect(row.getByRole('combobox', { name: '部位' })).toHaveValue('shoe');
  await row.getByRole('combobox', { name: '部位' }).selectOption('其他部位…');
  await page.getByRole('button', { name: '保存', exact: true }).click();
  await expect(row.getByLabel('部位名称')).toHaveAttribute('aria-invalid', 'true');
  await row.getByLabel('部位名称').fill('Sock liner');
  await row.getByLabel('部位名称').blur();
  await expect(row.getByLabel('部位名称')).toHaveValue('sock-liner');
  await expect(row.getByLabel('部位名称')).not.toHaveAttribute('aria-invalid', 'true');
});
