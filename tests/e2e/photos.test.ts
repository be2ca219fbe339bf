import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { httpClient } from '../support/doors.ts';
import { bowFields, customerFields, orderFields, shopFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { gpsExif, heicHead, jpegPicture, smallMail, smallPdf } from '../support/pictures.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;
let orderId: string;

async function seed(address: string): Promise<string> {
  const url = new URL(address);
  const token = url.hash.replace('#token=', '');
  const base = new URL('/', url).href;
  const owner = { name: 'Ida Penn', initials: 'IP' };
  const { personId } = await httpClient(base, token, '').setup.openShop({
    commandId: newCommandId(),
    shop: shopFields,
    owner,
  });
  const { id } = await httpClient(base, token, personId).intake.submit({
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'new', fields: customerFields },
    bow: { is: 'new', fields: bowFields },
    order: orderFields,
    startsAt: 'requested',
    cameBy: 'phone',
  });
  return id;
}

const section = () => session.page.getByRole('region', { name: 'Photographs and files' });
const tile = (name: string | RegExp) => section().getByRole('button', { name });

interface Given {
  name: string;
  mimeType: string;
  bytes: Buffer;
}

/** Lets files fall on the section, or pastes them there, as the browser itself would tell it. */
async function hand(how: 'drop' | 'paste', files: readonly Given[]): Promise<void> {
  const target = session.page.locator('#order-photos [data-takes-files]');
  await target.hover();
  const sent = files.map(({ name, mimeType, bytes }) => ({
    name,
    mimeType,
    base64: bytes.toString('base64'),
  }));
  await target.evaluate(
    (element, [kind, list]) => {
      const data = new DataTransfer();
      for (const { name, mimeType, base64 } of list) {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        data.items.add(new File([bytes], name, { type: mimeType }));
      }
      const common = { bubbles: true, cancelable: true };
      if (kind === 'paste') {
        document.body.dispatchEvent(
          new ClipboardEvent('paste', { ...common, clipboardData: data }),
        );
        return;
      }
      for (const type of ['dragover', 'drop']) {
        element.dispatchEvent(new DragEvent(type, { ...common, dataTransfer: data }));
      }
    },
    [how, sent] as const,
  );
}

beforeAll(async () => {
  session = await Session.open();
  orderId = await seed(session.program.url);
  const { page } = session;
  await page.goto(session.program.url);
  await page.getByRole('button', { name: /Ida Penn/ }).click();
  await see(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.goto(session.at(`orders/${orderId}`));
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

test('photographs come in by choosing, dragging and pasting; a refused file says why', async () => {
  const { page } = session;
  await see(section().getByText('No photographs or files yet.')).toBeVisible();
  await session.look('photos empty');
  const chooser = page.waitForEvent('filechooser');
  await section().getByRole('button', { name: 'Add photographs' }).click();
  await (await chooser).setFiles([
    {
      name: 'IMG 1.jpg',
      mimeType: 'image/jpeg',
      buffer: await jpegPicture({ width: 1800, height: 1200, exif: gpsExif, orientation: 6 }),
    },
    { name: 'IMG 2.heic', mimeType: 'image/heic', buffer: heicHead },
  ]);
  await see(section().getByRole('img', { name: /^The bow, taken 1 Mar/ })).toBeVisible();
  await see(section().getByText(/IMG 2\.heic is a HEIC photograph.*as JPEG/)).toBeVisible();
  await hand('drop', [
    { name: 'appraisal.pdf', mimeType: 'application/pdf', bytes: smallPdf },
    { name: 'message.eml', mimeType: '', bytes: smallMail },
  ]);
  await see(tile(/appraisal\.pdf/)).toBeVisible();
  await see(tile(/message\.eml/)).toBeVisible();
  const wide = await jpegPicture({ width: 900, height: 300, tint: '#d0d8e0' });
  await hand('paste', [{ name: 'image.png', mimeType: 'image/jpeg', bytes: wide }]);
  await see(section().getByRole('img')).toHaveCount(2);
  await hand('paste', [{ name: 'again.png', mimeType: 'image/jpeg', bytes: wide }]);
  await see(section().getByText('It was here already')).toBeVisible();
  await session.look('photos');
  await session.accessible('photographs');
  await section().getByRole('button', { name: 'Dismiss: again.png' }).click();
  await section().getByRole('button', { name: 'Dismiss: IMG 2.heic' }).click();
  await see(section().getByText('It was here already')).toHaveCount(0);
});

test('the large view turns pages by arrow keys, and is described in it', async () => {
  const { page } = session;
  await tile(/The bow.*taken 1 Mar/).click();
  const dialog = page.getByRole('dialog');
  await see(dialog.getByRole('img', { name: /^The bow, taken/ })).toBeVisible();
  await see(dialog.getByText('This photograph says where it was taken.')).toBeVisible();
  await see(dialog.getByRole('heading', { name: 'Photograph 4 of 4' })).toBeVisible();
  await page.keyboard.press('ArrowLeft');
  await see(dialog.getByRole('heading', { name: '3 of 4' })).toBeVisible();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await see(dialog.getByRole('heading', { name: '4 of 4' })).toBeVisible();
  await dialog.getByRole('button', { name: 'Describe' }).click();
  await dialog.getByLabel('Caption').fill('upper fade, belly side');
  await session.accessible('large view');
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await see(dialog.getByRole('heading', { name: 'upper fade, belly side' })).toBeVisible();
  await session.look('photos large view');
  await page.keyboard.press('Escape');
  await see(dialog).toHaveCount(0);
  await see(tile(/upper fade, belly side/)).toBeFocused();
});

test('a copy without location leaves the shop, the original stays as it was', async () => {
  const { page } = session;
  await tile(/upper fade/).click();
  const saved = async (button: string) => {
    const download = page.waitForEvent('download');
    await page.getByRole('dialog').getByRole('button', { name: button }).click();
    const file = await download;
    return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
  };
  const copy = await saved('Save a copy without location');
  expect(copy.name).toBe('26-0001 upper fade, belly side.jpg');
  expect((await sharp(copy.bytes).metadata()).exif).toBeUndefined();
  const original = await saved('Save the original');
  expect(original.name).toBe('IMG 1.jpg');
  expect((await sharp(original.bytes).metadata()).exif).toBeDefined();
  await page.keyboard.press('Escape');
});

test('a message is read in place; a struck file stays, with its reason', async () => {
  const { page } = session;
  await tile(/message\.eml/).click();
  const dialog = page.getByRole('dialog');
  await see(dialog.getByText('It is on its way.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Strike out' }).click();
  await dialog.getByRole('button', { name: 'Strike out' }).click();
  await see(dialog.getByText('Give the reason in a few words.')).toBeVisible();
  await dialog.getByLabel(/Why does it not count/).fill('from another customer');
  await dialog.getByRole('button', { name: 'Strike out' }).click();
  await see(dialog.getByText('Struck out: from another customer')).toBeVisible();
  await page.keyboard.press('Escape');
  await see(tile(/message\.eml.*Struck out/)).toBeVisible();
});

test.each([
  ['narrow', 390, 844, 'dark'],
  ['zoomed', 640, 430, 'light'],
] as const)('%s: nothing runs out of the screen', async (look, width, height, scheme) => {
  const { page } = session;
  await page.setViewportSize({ width, height });
  await page.evaluate((value) => localStorage.setItem('mantine-color-scheme-value', value), scheme);
  await page.goto(session.at(`orders/${orderId}`));
  // Pictures are read when somebody comes near them.
  await section().scrollIntoViewIfNeeded();
  await tile(/upper fade/).scrollIntoViewIfNeeded();
  await see(section().getByRole('img').first()).toBeVisible();
  const overflow = () =>
    page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
  expect(await overflow()).toBeLessThanOrEqual(0);
  await session.look(`photos ${look}`);
  await tile(/upper fade/).click();
  const dialog = page.getByRole('dialog');
  await see(dialog.getByRole('img', { name: /upper fade/ })).toBeVisible();
  expect(await overflow()).toBeLessThanOrEqual(0);
  await session.look(`photos large view ${look}`);
  await session.accessible(`large view, ${look}`);
  expect(session.troubles()).toEqual([]);
  await page.keyboard.press('Escape');
});
