/**
 * A run logged by keyboard alone, by somebody who sees nothing: every step goes by what the browser's
 * accessibility tree says has the focus, never by where something is drawn.
 */
import { expect, test, type CDPSession, type Page } from '@playwright/test';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

interface Spoken {
  readonly role: string;
  readonly name: string;
  readonly value: string;
  readonly states: Readonly<Record<string, unknown>>;
}

interface Node {
  readonly ignored: boolean;
  readonly role?: { readonly value: string };
  readonly name?: { readonly value: string };
  readonly value?: { readonly value: string | number };
  readonly properties?: readonly { readonly name: string; readonly value: { value?: unknown } }[];
}

class Reader {
  readonly #page: Page;
  readonly #session: CDPSession;

  constructor(page: Page, session: CDPSession) {
    this.#page = page;
    this.#session = session;
  }

  async tree(): Promise<readonly Spoken[]> {
    const { nodes } = (await this.#session.send('Accessibility.getFullAXTree')) as unknown as {
      nodes: readonly Node[];
    };
    return nodes
      .filter(({ ignored }) => !ignored)
      .map(({ role, name, value, properties }) => ({
        role: role?.value ?? '',
        name: name?.value ?? '',
        value: String(value?.value ?? ''),
        states: Object.fromEntries((properties ?? []).map((one) => [one.name, one.value.value])),
      }));
  }

  /** What a screen reader says of the element that has the focus. */
  async focus(): Promise<Spoken | undefined> {
    const focused = (await this.tree()).filter(({ states }) => states['focused'] === true);
    return focused.find(({ role }) => role !== 'RootWebArea') ?? focused[0];
  }

  /** Presses Tab until the focus is on this; then says what it is. */
  async reach(role: string, name: string | RegExp): Promise<Spoken> {
    const heard: string[] = [];
    for (let press = 0; press < 60; press++) {
      const here = await this.focus();
      if (here?.role === role && here.name.match(name)) return here;
      heard.push(`${here?.role} “${here?.name}”`);
      await this.#page.keyboard.press('Tab');
    }
    throw new Error(`Tab never reaches ${role} ${String(name)}; heard: ${heard.join(', ')}`);
  }

  press(...keys: readonly string[]): Promise<void> {
    return keys.reduce(
      (before, key) => before.then(() => this.#page.keyboard.press(key)),
      Promise.resolve(),
    );
  }

  type(text: string): Promise<void> {
    return this.#page.keyboard.type(text);
  }

  /** Waits until something in the tree says this. */
  async hears(text: string): Promise<void> {
    await expect
      .poll(async () => (await this.tree()).some(({ name }) => name.includes(text)), {
        message: `nobody says: ${text}`,
      })
      .toBe(true);
  }
}

test('a run with a complaint is logged by keyboard and screen reader alone', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  const reader = new Reader(page, await page.context().newCDPSession(page));
  await reader.reach('button', 'Join');
  await reader.press('Enter');
  await reader.hears('Pairs I hold');
  await reader.reach('link', /^Log a run$/);
  await reader.press('Enter');
  await reader.hears('Distance, km');

  const distance = await reader.reach('textbox', 'Distance, km');
  expect(distance.states['invalid']).toBe('false');
  await reader.type('6.4');
  await reader.reach('textbox', /^Time$/);
  await reader.type('3200');
  await reader.reach('checkbox', /^road$/);
  await reader.press('Space');
  expect((await reader.focus())?.states['checked']).toBe('true');

  await reader.reach('slider', 'Overall comfort');
  // The tree that the debugging protocol shows leaves the spoken value of sliders out.
  const slider = page.getByRole('slider', { name: 'Overall comfort' });
  await expect(slider).toHaveAttribute(
    'aria-valuetext',
    'not answered; 0: not comfortable at all, 100: most comfortable imaginable',
  );
  await reader.press('Home', 'PageUp', 'PageUp', 'ArrowRight');
  expect((await reader.focus())?.value).toBe('21');
  await expect(slider).toHaveAttribute('aria-valuetext', '21, towards not comfortable at all');

  await reader.reach('radio', 'Nothing bothered me');
  await reader.press('ArrowRight');
  expect(await reader.focus()).toMatchObject({ role: 'radio', name: 'Something did' });
  await reader.hears('What bothered you?');
  await reader.reach('button', 'right, heel cup');
  await reader.press('Enter');
  await reader.hears('What was it like?');
  await reader.reach('radio', 'Heel slip');
  await reader.press('Space');
  // The group's name comes with its radio buttons, so that "4" says of what.
  const groups = (await reader.tree()).filter(({ role }) => role === 'group');
  expect(groups.map(({ name }) => name)).toContain('How much');
  await reader.reach('radio', '0: hardly');
  await reader.press('Space', 'ArrowRight', 'ArrowRight', 'ArrowRight');
  expect(await reader.focus()).toMatchObject({ role: 'radio', name: '3' });
  await reader.reach('button', 'Done');
  await reader.press('Enter');
  await reader.hears('Heel slip, right heel cup');

  await reader.reach('button', 'Save');
  await reader.press('Enter');
  await reader.hears('Saved on this phone');
});

test('what is missing is said and gets the focus', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  const reader = new Reader(page, await page.context().newCDPSession(page));
  await reader.reach('button', 'Join');
  await reader.press('Enter');
  await reader.hears('Pairs I hold');
  await reader.reach('link', /^Log a run$/);
  await reader.press('Enter');
  await reader.hears('Distance, km');
  await reader.reach('button', 'Save');
  await reader.press('Enter');
  await expect.poll(async () => (await reader.focus())?.name).toBe('Distance, km');
  expect((await reader.focus())?.states['invalid']).toBe('true');
  await reader.hears('How far was it?');
});

test('pain that calls for it is answered by a notice that is read out', async ({ page }) => {
  await page.goto(`${hub.url}/join#${hub.codes.tester}`);
  const reader = new Reader(page, await page.context().newCDPSession(page));
  await reader.reach('button', 'Join');
  await reader.press('Enter');
  await reader.hears('Pairs I hold');
  await reader.reach('link', /^Log a run$/);
  await reader.press('Enter');
  await reader.hears('10: worst');
  await reader.reach('radio', '0: none');
  await reader.press('Space', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight');
  await reader.hears('Is it new?');
  await reader.reach('radio', 'Yes');
  await reader.press('Space');
  await expect
    .poll(async () => (await reader.tree()).some(({ role }) => role === 'alert'))
    .toBe(true);
  await reader.hears('see a doctor or physiotherapist');
  // It never says that running is fine.
  for (const { name } of await reader.tree()) expect(name).not.toMatch(/safe to run|can run on/i);
});
