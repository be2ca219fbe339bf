import { afterAll, afterEach, beforeAll, test } from 'vitest';
import { Core } from '../../core/host/core.ts';
import { addPerson } from '../../core/shop/setup/people.ts';
import { openShop } from '../../core/shop/setup/shop.ts';
import { shopFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { expect as see } from './page.ts';
import { expectReadable, twoLooks } from './readable.ts';
import { Session } from './session.ts';

let session: Session;

/** A shop that was opened on a computer whose clock ran a year ahead. */
async function openedAhead(dataFolder: string): Promise<void> {
  const year = 365 * 24 * 60 * 60_000;
  const core = new Core({ dataFolder, now: () => new Date(Date.now() + year).toISOString() });
  await core.settled();
  const { personId } = await openShop(core.shop(), 'test', {
    commandId: newCommandId(),
    shop: shopFields,
    owner: { name: 'Ida Penn', initials: 'IP' },
  });
  const actor = { personId, name: 'Ida Penn', role: 'owner', device: 'test' } as const;
  await addPerson(
    { ...core.shop(), actor },
    { commandId: newCommandId(), name: 'Ben Marsh', initials: 'BM', role: 'bench' },
  );
  await core.close();
}

beforeAll(async () => {
  session = await Session.open(openedAhead);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

async function finishRoomOf(person: string): Promise<void> {
  const { page } = session;
  await page.goto(session.program.url);
  await page.getByRole('button', { name: new RegExp(person) }).click();
  await see(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
  await page.goto(session.at('finish-room'));
}

const trouble = () =>
  session.page
    .getByRole('main')
    .getByText(/The clock of the computer stands 36\d days.* before the last record/);
const isRight = () => session.page.getByRole('button', { name: 'The clock is right ...' });

test('the bench is told what is wrong with the clock, and that the owner can say it is right', async () => {
  await finishRoomOf('Ben Marsh');
  await see(trouble()).toBeVisible();
  await see(trouble()).toContainText('the owner says so in the finish room');
  await see(isRight()).toHaveCount(0);
});

test('the owner looks at day and time, says that they are right, and times count again', async () => {
  const { page } = session;
  await page.getByRole('button', { name: /Ben Marsh is working/ }).click();
  await page.getByRole('menuitem', { name: /Ida Penn/ }).click();
  await see(trouble()).toBeVisible();
  const form = page.getByRole('form', { name: 'Is the clock right?' });
  await expectReadable(session, 'finish room: clock', 'finish-room', {
    looks: twoLooks,
    prepare: () => isRight().click(),
    seen: async () => see(form).toContainText(String(new Date().getFullYear())),
  });
  await form.getByRole('button', { name: 'Cancel' }).click();
  await see(trouble()).toBeVisible();
  await isRight().click();
  await form.getByRole('button', { name: 'Yes, day and time are right' }).click();
  await see(trouble()).toHaveCount(0);
  await page.reload();
  await see(page.getByRole('heading', { name: 'Finish room', level: 1 })).toBeVisible();
  await see(page.getByText('Reading ...')).toHaveCount(0);
  await see(page.getByText(/clock of the computer/)).toHaveCount(0);
});
