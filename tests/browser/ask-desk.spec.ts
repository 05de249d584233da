/**
 * A lead asks, a tester answers: from an odd run and from a report of pain, with the phone offline in between; what would
 * tell the tester what was changed is warned of; what was withdrawn is asked of nobody; and a tester writes unasked.
 */
import { devices, expect, test, type Browser, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';
import { Hand } from './hand.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { joinAsTester, openLead, syncLead, syncTester } from './two-people.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

/** T01's phone, in a context of its own so that it can be without a network alone. */
const openPhone = async (browser: Browser): Promise<Page> => {
  const viewport = { width: 360, height: 760 };
  const context = await browser.newContext({ ...devices['Pixel 7'], viewport, locale: 'en-GB' });
  const phone = await context.newPage();
  await joinAsTester(phone, hub);
  await phone.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return phone;
};

const saved = (phone: Page) => phone.getByText('Saved on this phone').waitFor();

/** A run at a pace that nobody runs, two days ago. */
const logOdd = async (phone: Page) => {
  await phone.getByRole('link', { name: /^Log a run in/ }).click();
  await phone.getByLabel('Distance, km').fill('32');
  await phone.getByLabel('Time', { exact: true }).fill('40:00');
  await phone.getByLabel('Day of the run').selectOption('Another day');
  const day = new Date(Date.now() - 2 * 86_400_000).toISOString().slice(0, 10);
  await phone.getByLabel('Started').fill(`${day}T07:00`);
  await phone.getByText('road', { exact: true }).click();
  await phone.getByRole('button', { name: 'Save' }).click();
  await phone.getByRole('button', { name: 'Yes, save it' }).click();
  await saved(phone);
};

/** Pain, 5 of 10. */
const logPain = async (phone: Page) => {
  await phone.goto(hub.url);
  await phone.getByRole('link', { name: /^Log a run in/ }).click();
  await phone.getByLabel('Distance, km').fill('7');
  await phone.getByLabel('Distance, km').blur();
  await phone.locator('.choices-ten').last().getByRole('radio').nth(5).focus();
  await phone.keyboard.press('Space');
  await phone.getByRole('button', { name: 'I have read this' }).click();
  await phone.getByRole('button', { name: 'Save' }).click();
  await saved(phone);
};

const toAsk = (lead: Page) => lead.getByRole('region', { name: 'To ask' });
const waiting = (lead: Page) => lead.getByRole('region', { name: 'Waiting for an answer' });
const thread = (lead: Page) => lead.getByRole('region', { name: 'Questions and answers' });
const question = (phone: Page) => phone.getByRole('region', { name: 'A question from your lead' });
const answered = (phone: Page) => phone.getByRole('region', { name: 'Your answer' });

test('a lead asks from a pain and from an odd run; the tester answers offline with two taps at most', async ({
  browser,
}) => {
  const phone = await openPhone(browser);
  await logOdd(phone);
  await logPain(phone);
  await syncTester(phone, hub);
  const lead = await openLead(browser, hub);
  const project = new URL(lead.url()).pathname;
  const askPlace = async () => {
    await lead.goto(`${hub.url}${project}/ask`);
    await toAsk(lead).waitFor();
  };

  // From the report of pain: its line on the sheet leads to the run, where the question stands ready.
  await lead.getByRole('link', { name: 'Answer T01: pain' }).click();
  await lead.getByRole('button', { name: 'Ask T01 about this run' }).click();
  const form = lead.getByRole('region', { name: 'Ask T01 about this run' });
  await expect(form.getByLabel('What they read')).toHaveValue('How is the pain now?');
  await form.getByRole('button', { name: 'Ask T01', exact: true }).click();
  await expect(thread(lead).getByText('No answer yet.')).toBeVisible();
  const painRun = lead.url();
  expect(await axeFaults(lead)).toEqual([]);

  // From the odd run: one press, taken back, and pressed again.
  await askPlace();
  await expect(lead.locator('main h1')).toHaveText(/^\d+ things to ask \d+ testers\.$/);
  const pace = toAsk(lead).getByRole('button', { name: /^Ask T01: Was it really 1:15/ });
  await pace.click();
  await expect(pace).toHaveCount(0);
  await expect(waiting(lead).getByText(/^Was it really 1:15/)).toBeVisible();
  await lead.getByRole('button', { name: 'Undo' }).click();
  await pace.click();
  await expect(waiting(lead).getByRole('listitem')).toHaveCount(2);

  // In own words: what tells the change is warned of, and mended words are not.
  await lead.getByRole('button', { name: 'Another question' }).click();
  const other = lead.getByRole('region', { name: 'Another question' });
  await other.getByRole('button', { name: 'Send the question' }).click();
  await expect(other.getByText('Choose whom to ask.')).toBeVisible();
  await expect(other.getByText('Type the question.')).toBeVisible();
  await other.getByLabel('Whom').selectOption('T01');
  await other
    .getByLabel('What they read')
    .fill('Does the collar rub less since it is 3 mm higher?');
  const warning = other.getByText(/^This may tell T01 what was changed: .*“collar”/);
  await expect(warning).toBeVisible();
  expect(await axeFaults(lead)).toEqual([]);
  await other.getByLabel('What they read').fill('How does your ankle feel on stairs?');
  await expect(warning).toHaveCount(0);
  await other.getByRole('button', { name: 'Ask T01', exact: true }).click();
  const stairs = 'How does your ankle feel on stairs?';
  await waiting(lead)
    .getByRole('button', { name: `Withdraw: ${stairs}` })
    .click();
  await expect(lead.getByText('Question withdrawn')).toBeVisible();
  await expect(waiting(lead).getByText(stairs)).toHaveCount(0);
  await syncLead(lead, hub);

  // The phone has them, and loses its network.
  await syncTester(phone, hub);
  await question(phone).waitFor();
  await phone.context().setOffline(true);
  await phone.reload();
  await expect(question(phone)).toContainText('1 of 2');
  await expect(question(phone)).toContainText('How is the pain now?');
  expect(await axeFaults(phone)).toEqual([]);
  const hand = new Hand(phone);
  await hand.tap(question(phone).getByRole('button', { name: 'Less' }));
  await expect(answered(phone)).toContainText('Less');
  expect(hand.taps).toBeLessThanOrEqual(2);
  expect(await axeFaults(phone)).toEqual([]);
  await answered(phone).getByRole('button', { name: 'Undo' }).click();
  await question(phone).getByRole('button', { name: 'The same' }).click();
  await answered(phone).getByRole('button', { name: 'Add a few words' }).click();
  await answered(phone).getByLabel('Your answer in a few words').fill('Only downhill');
  await answered(phone).getByRole('button', { name: 'Send' }).click();
  const next = new Hand(phone);
  await next.tap(answered(phone).getByRole('button', { name: 'One more question' }));
  await expect(question(phone)).toContainText(/Was it really 1:15/);
  await next.tap(question(phone).getByRole('button', { name: 'No, I mistyped' }));
  await expect(answered(phone)).toContainText('No, I mistyped');
  expect(next.taps).toBeLessThanOrEqual(2);
  await expect(phone.getByText(stairs)).toHaveCount(0);

  // Unasked, about the pair.
  await phone.getByRole('link', { name: 'This pair' }).click();
  await phone.getByRole('button', { name: 'Write to my lead' }).click();
  await phone.getByLabel('About pair 637').fill('The left lace frays at the top eyelet.');
  await phone.getByRole('button', { name: 'Send' }).click();
  await expect(phone.getByText('Written to your lead')).toBeVisible();
  await expect(phone.getByText('The left lace frays at the top eyelet.')).toBeVisible();
  expect(await axeFaults(phone)).toEqual([]);
  await phone.context().setOffline(false);
  await syncTester(phone, hub);

  // All of it reaches the lead, and what was read is read.
  await syncLead(lead, hub);
  await expect(lead.getByRole('link', { name: '3 answers to read' })).toBeVisible();
  await lead.goto(painRun);
  await expect(thread(lead)).toContainText('The same');
  await expect(thread(lead)).toContainText('Only downhill');
  await expect(thread(lead)).toContainText('new');
  await lead.goto(`${hub.url}${project}`);
  await lead.getByRole('link', { name: '2 answers to read' }).click();
  const fresh = lead.getByRole('region', { name: '2 answers to read' });
  await expect(fresh).toContainText('No, I mistyped');
  await expect(fresh).toContainText('The left lace frays at the top eyelet.');
  expect(await axeFaults(lead)).toEqual([]);
  await fresh.getByRole('button', { name: 'Write back to T01' }).click();
  await fresh.getByLabel('A few words to the tester').fill('Thank you, a new lace comes.');
  await fresh.locator('form').getByRole('button', { name: 'Write back to T01' }).click();
  await expect(fresh.getByText('Thank you, a new lace comes.')).toBeVisible();
  await lead.goto(`${hub.url}${project}`);
  await lead.locator('.todo').waitFor();
  await expect(lead.getByRole('link', { name: /to read$/ })).toHaveCount(0);

  // And what the lead wrote reaches the tester, on the page of the pair; the run's page has its own thread.
  await syncLead(lead, hub);
  await syncTester(phone, hub);
  await phone.getByRole('link', { name: 'This pair' }).click();
  await expect(phone.getByText('Thank you, a new lace comes.')).toBeVisible();
  await phone.goto(`${hub.url}/run/${painRun.split('/').at(-1)}`);
  await expect(phone.getByText('Only downhill')).toBeVisible();
  await phone.context().close();
  await lead.context().close();
});
