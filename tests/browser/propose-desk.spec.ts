/**
 * A lead and a specialist answer each other, each on a profile of their own; the specialist on a phone and without a
 * network while answering: a finding is asked, 2 mm less are proposed by a day, the lead accepts, the next round carries
 * it as a structure. Then what is asked again, and what is taken back.
 */
import { expect, test, type Browser, type Page } from '@playwright/test';
import type { Finding, Proposal, ProposalReply, Round } from '../../core/records/index.ts';
import { axeFaults } from './axe.ts';
import { photosHeld, recordsHeld } from './device.ts';
import { DEMO, startHubProcess, type HubProcess } from './hub-process.ts';
import { openLead } from './two-people.ts';

let hub: HubProcess;
test.beforeEach(async () => {
  hub = await startHubProcess('--demo', DEMO);
});
test.afterEach(() => hub.stop());

const TITLE = 'The collar rubs the ankle';

/** A day so many days from now, as the date control takes it. */
const dayFromNow = (days: number): string => {
  const at = new Date(Date.now() + days * 86_400_000);
  return `${at.getFullYear()}-${String(at.getMonth() + 1).padStart(2, '0')}-${String(at.getDate()).padStart(2, '0')}`;
};

/** A photo that the browser can read: one small picture, drawn there. */
const picture = (page: Page): Promise<Buffer> =>
  page
    .evaluate(async () => {
      const canvas = new OffscreenCanvas(64, 48);
      const draw = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
      draw.fillStyle = '#a33610';
      draw.fillRect(8, 8, 40, 24);
      const bytes = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer());
      return [...bytes];
    })
    .then((bytes) => Buffer.from(bytes));

const syncGroup = async (lead: Page) => {
  await lead.goto(`${hub.url}/desk/group`);
  await lead.getByRole('button', { name: 'Sync now' }).click();
  await expect(lead.getByText('Up to date.')).toBeVisible();
};

/** Writes the finding, with a photo, and asks the trade. @returns the address of its page */
const askTrade = async (lead: Page): Promise<string> => {
  const project = hub.url + new URL(lead.url()).pathname;
  await lead.goto(`${project}/changes/findings/new`);
  const form = lead.getByRole('region', { name: 'New finding' });
  await form.getByLabel('Round', { exact: true }).selectOption({ label: 'Round 1' });
  await form.getByLabel('Measure and site').selectOption({ label: 'Tread depth, lateral heel' });
  await form.getByLabel('Title', { exact: true }).fill(TITLE);
  await form.getByLabel('Part that can act').selectOption({ label: 'upper pattern' });
  await form.getByLabel(/^Wanted change(?! in)/).fill('Lower collar at the ankle');
  await form.getByLabel('in mm, if it has a size').fill('4');
  await form
    .locator('input[type=file]')
    .setInputFiles({ name: 'collar.png', mimeType: 'image/png', buffer: await picture(lead) });
  await form.getByRole('img', { name: /Photo/ }).waitFor();
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(lead.getByRole('heading', { level: 1 })).toHaveText(TITLE);
  const address = lead.url();
  await lead.getByRole('button', { name: 'Ask the trade' }).click();
  const talk = lead.getByRole('region', { name: 'Asked, answered, changed, tested' });
  await expect(talk.getByText('Trade: answer the finding since today')).toBeVisible();
  return address;
};

/** A specialist joins on a phone. */
const openSpecialist = async (browser: Browser, lead: Page): Promise<Page> => {
  await syncGroup(lead);
  await lead.getByRole('button', { name: 'Invite a specialist' }).click();
  const code = await lead.locator('.code').textContent();
  const context = await browser.newContext({
    locale: 'en-GB',
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'allow',
  });
  const page = await context.newPage();
  await page.goto(`${hub.url}/join#${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByText(TITLE).first().waitFor();
  return page;
};

const openFinding = async (page: Page) => {
  await page.goto(hub.url);
  await page.getByRole('link', { name: new RegExp(`: ${TITLE}$`) }).click();
  await page.getByRole('heading', { level: 1, name: TITLE }).waitFor();
};

const answerForm = (page: Page) => page.getByRole('form', { name: 'Your answer' });

/** What the phone wrote goes to the hub. */
const sendAll = (page: Page) =>
  expect
    .poll(
      () =>
        page.evaluate(
          () =>
            new Promise<number>((done) => {
              const opening = indexedDB.open('pairlog');
              opening.onsuccess = () => {
                const tx = opening.result.transaction(['outbox', 'attachmentOutbox']);
                const asking = tx.objectStore('outbox').count();
                const files = tx.objectStore('attachmentOutbox').count();
                tx.oncomplete = () => {
                  opening.result.close();
                  done(asking.result + files.result);
                };
              };
            }),
        ),
      { timeout: 20_000 },
    )
    .toBe(0);

test('two millimetres less by a day are proposed offline, accepted, and carried by the next round', async ({
  browser,
}) => {
  test.setTimeout(120_000);
  const lead = await openLead(browser, hub);
  const address = await askTrade(lead);
  const phone = await openSpecialist(browser, lead);
  await expect(phone.getByRole('heading', { name: /waiting for your answer/ })).toBeVisible();
  await openFinding(phone);
  await expect(phone.getByText('Lower collar at the ankle, 4 mm')).toBeVisible();
  // The photo that the lead put into it, and the curve that was frozen with it.
  await phone.getByRole('img', { name: `Photo, ${TITLE}` }).waitFor();
  await expect(phone.locator('.reader-finding figure svg').first()).toBeVisible();
  expect(await axeFaults(phone)).toEqual([]);

  await phone.context().setOffline(true);
  await phone.getByRole('button', { name: 'Answer', exact: true }).click();
  const form = answerForm(phone);
  await form.getByRole('button', { name: 'Send the answer' }).click();
  await expect(form.getByText('Choose one of the three.')).toBeVisible();
  await form.getByText('Another way', { exact: true }).click();
  await form.getByLabel('By how much').fill('two');
  await form.getByLabel('Next sample ready on').fill(dayFromNow(-3));
  await form.getByRole('button', { name: 'Send the answer' }).click();
  // All that is wrong, each at its field, and gone when it is mended.
  await expect(form.getByText('Choose which way it moves.')).toBeVisible();
  await expect(form.getByText('This day has passed. Choose a later one.')).toBeVisible();
  await expect(form.getByLabel('By how much')).toHaveAttribute('aria-invalid', 'true');
  await form.getByLabel('What moves or grows').selectOption({ label: 'Collar line' });
  await form.getByLabel('Which way').selectOption({ label: 'lower' });
  await form.getByLabel('By how much').fill('2');
  await form.getByLabel('Shoe', { exact: true }).selectOption({ label: 'left' });
  await form.getByLabel('Next sample ready on').fill(dayFromNow(7));
  await form.getByLabel('Why, or what else').fill('The lining seam sits there.');
  await form
    .locator('input[type=file]')
    .setInputFiles({ name: 'sketch.png', mimeType: 'image/png', buffer: await picture(phone) });
  await form.getByRole('img', { name: /Photo/ }).waitFor();
  await expect(form.locator('.field-error')).toHaveCount(0);
  expect(await axeFaults(phone)).toEqual([]);
  await form.getByRole('button', { name: 'Send the answer' }).click();
  await expect(phone.getByText('Collar line: 2 mm lower, left')).toBeVisible();
  await expect(phone.getByText('Not sent yet: kept on this device.')).toBeVisible();
  const [written] = await recordsHeld<Proposal>(phone, 'proposal');
  expect(written).toMatchObject({
    answer: 'other',
    change: {
      ...{ part: 'upper-pattern', line: 'collar', foot: 'left', direction: 'lower' },
      by: { amount: 2, unit: 'mm' },
    },
    words: 'The lining seam sits there.',
  });
  await phone.context().setOffline(false);
  await sendAll(phone);
  await openFinding(phone);
  await expect(phone.getByText('Not sent yet: kept on this device.')).toHaveCount(0);

  // The lead: on the sheet's to-do, on the board, on the finding.
  await syncGroup(lead);
  await lead.goto(address.replace(/\/changes\/.*/, ''));
  await lead.getByRole('link', { name: '1 proposal to answer' }).click();
  await expect(lead).toHaveURL(address);
  const talk = lead.getByRole('region', { name: 'Asked, answered, changed, tested' });
  await expect(talk.getByText('Lead: accept or ask again since today')).toBeVisible();
  await expect(talk.getByText('Another way: Collar line: 2 mm lower, left')).toBeVisible();
  await talk.getByRole('img', { name: 'Photo, Sketch or photo' }).waitFor();
  await talk.getByRole('button', { name: 'Accept this answer' }).click();
  await expect(talk.getByText('Lead: choose the round since today')).toBeVisible();

  // Undone, and accepted again.
  await lead.getByRole('button', { name: 'Undo' }).click();
  await talk.getByRole('button', { name: 'Accept this answer' }).click();
  await talk.getByRole('button', { name: 'Put this change into a round' }).click();
  const carried = talk.getByRole('region', { name: 'Put this change into a round' });
  await expect(carried.getByLabel('By how much')).toHaveValue('2');
  await expect(carried.getByLabel('What is changed, in one line')).toHaveValue(
    'Collar line: 2 mm lower, left',
  );
  await carried.getByLabel('By how much').fill('2.5');
  await carried.getByLabel('What is changed, in one line').fill('Left collar 2.5 mm lower');
  expect(await axeFaults(lead)).toEqual([]);
  await carried.getByRole('button', { name: 'Put it into the round' }).click();
  await expect(talk.getByRole('link', { name: /carries it$/ })).toBeVisible();

  const proposals = await recordsHeld<Proposal>(lead, 'proposal');
  expect(proposals).toHaveLength(1);
  const rounds = await recordsHeld<Round>(lead, 'round');
  const change = rounds
    .flatMap(({ changes }) => changes)
    .find(({ proposal }) => proposal !== undefined);
  expect(change).toMatchObject({
    ...{ part: 'upper-pattern', what: 'Left collar 2.5 mm lower' },
    structured: { line: 'collar', direction: 'lower', by: { amount: 2.5, unit: 'mm' } },
  });
  const findings = await recordsHeld<Finding>(lead, 'finding');
  expect(findings.find(({ title }) => title === TITLE)?.carriedBy).toBeDefined();

  // The story is told in its order, and the board says whose turn it is.
  await expect(talk.locator('.story > li')).toHaveText([
    /asked$/,
    /Another way/,
    /Accepted/,
    /carries it/,
  ]);
  await lead.goto(address.replace(/\/findings\/.*/, ''));
  const row = lead.getByRole('row').filter({ hasText: TITLE });
  await expect(row.getByText(/since today|for \d+ days?/)).toBeVisible();
});

test('what is asked again is answered anew, corrected and taken back', async ({ browser }) => {
  test.setTimeout(120_000);
  const lead = await openLead(browser, hub);
  const address = await askTrade(lead);
  const phone = await openSpecialist(browser, lead);
  await expect.poll(() => photosHeld(phone)).toBeGreaterThan(0);
  await openFinding(phone);
  await phone.getByRole('button', { name: 'Answer', exact: true }).click();
  await answerForm(phone).getByText('Cannot do', { exact: true }).click();
  await answerForm(phone).getByRole('button', { name: 'Send the answer' }).click();
  await expect(phone.getByText(/^Say why not/)).toBeVisible();
  await answerForm(phone).getByLabel('Why not').fill('The mould is closed.');
  await answerForm(phone).getByRole('button', { name: 'Send the answer' }).click();
  await expect(phone.getByText('The mould is closed.')).toBeVisible();
  await sendAll(phone);

  await syncGroup(lead);
  await lead.goto(address);
  const talk = lead.getByRole('region', { name: 'Asked, answered, changed, tested' });
  // What cannot be done cannot be accepted.
  await expect(talk.getByRole('button', { name: 'Accept this answer' })).toHaveCount(0);
  await talk.getByRole('button', { name: 'Ask again' }).click();
  await talk.getByRole('button', { name: 'Ask again' }).click();
  await expect(talk.getByText('Say what you ask for now.')).toBeVisible();
  await talk.getByLabel('What to say to the specialist').fill('And with the old mould, 2 mm?');
  await talk.getByRole('button', { name: 'Ask again' }).click();
  await expect(talk.getByText('Trade: answer the finding since today')).toBeVisible();
  expect(await recordsHeld<ProposalReply>(lead, 'proposal-reply')).toHaveLength(1);
  await syncGroup(lead);

  await phone.goto(`${hub.url}/settings`);
  await phone.goto(hub.url);
  await expect(phone.getByText(/^The lead asks again\./)).toBeVisible({ timeout: 20_000 });
  await openFinding(phone);
  await expect(phone.getByText('And with the old mould, 2 mm?')).toBeVisible();
  await phone.getByRole('button', { name: 'Answer', exact: true }).click();
  await answerForm(phone).getByText('Can do', { exact: true }).click();
  await answerForm(phone).getByRole('button', { name: 'Send the answer' }).click();
  await phone.getByRole('button', { name: 'Correct the answer' }).click();
  await answerForm(phone)
    .getByLabel(/^Anything to add/)
    .fill('By Friday.');
  await answerForm(phone).getByRole('button', { name: 'Correct the answer' }).click();
  await expect(phone.getByText('By Friday.')).toBeVisible();
  await phone.getByRole('button', { name: 'Take the answer back' }).click();
  await expect(phone.getByText('By Friday.')).toHaveCount(0);
  await phone.getByRole('button', { name: 'Undo' }).click();
  await expect(phone.getByText('By Friday.')).toBeVisible();
  await phone.getByRole('button', { name: 'Take the answer back' }).click();
  await expect(phone.getByRole('button', { name: 'Answer', exact: true })).toBeVisible();
  await sendAll(phone);

  await syncGroup(lead);
  await lead.goto(address);
  await expect(talk.getByText('Cannot do')).toBeVisible();
  await expect(talk.getByText('By Friday.')).toHaveCount(0);
  await expect(talk.getByText('Trade: answer the finding since today')).toBeVisible();
});
