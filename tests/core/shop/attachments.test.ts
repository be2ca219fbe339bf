import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { Core } from '../../../core/host/core.ts';
import { addAttachment } from '../../../core/shop/attachments/add.ts';
import {
  describeAttachment,
  listAttachments,
  strikeOutAttachment,
} from '../../../core/shop/attachments/attachments.ts';
import { attachmentImage, copyToSend } from '../../../core/shop/attachments/images.ts';
import { addBow } from '../../../core/shop/bows/bows.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { historyOf } from '../../../core/shop/orders/history.ts';
import { identifyBow } from '../../../core/shop/orders/orders.ts';
import type { Attachment } from '../../../shared/contract/attachments.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { bowFields } from '../../support/fixtures.ts';
import {
  avifPicture,
  fileOf,
  gpsExif,
  heicHead,
  jpegPicture,
  smallMail,
  smallPdf,
} from '../../support/pictures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';

type Input = ContractInputs['attachments']['add'];

function input(file: File, change: Partial<Input> = {}): Input {
  return {
    commandId: newCommandId(),
    file,
    about: 'bow',
    orderId: null,
    bowId: null,
    findingId: null,
    incidentId: null,
    shipmentId: null,
    caption: '',
    ...change,
  };
}

async function bowOf(shop: TestShop, orderId: string): Promise<string> {
  const row = await shop.owner.read
    .selectFrom('shop_order')
    .select('bow_id')
    .where('id', '=', orderId)
    .executeTakeFirstOrThrow();
  if (row.bow_id === null) throw new Error('the order has no bow');
  return row.bow_id;
}

async function only(shop: TestShop, orderId: string): Promise<Attachment> {
  const files = await listAttachments(shop.owner, { orderId });
  expect(files).toHaveLength(1);
  const [file] = files;
  if (file === undefined) throw new Error('no file');
  return file;
}

/** Files on the disk that are not pictures made from another. */
function originals(shop: TestShop): string[] {
  return readdirSync(join(shop.folder, 'attachments'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.includes('.'))
    .map((entry) => entry.name);
}

const crack = (orderId: string) => ({
  commandId: newCommandId(),
  orderId,
  grade: 'stop' as const,
  place: 'Upper limb, belly',
  note: '',
});

async function addCrack(shop: TestShop, orderId: string): Promise<string> {
  return (await addFinding(shop.owner, crack(orderId))).id;
}

describe('adding', () => {
  test('a photograph is kept with what the camera noted, and the original untouched', async () => {
    const shop = await testShop();
    const order = await takeIn(shop);
    const bytes = await jpegPicture({ exif: gpsExif, orientation: 6 });
    const added = await addAttachment(
      shop.as('bench'),
      input(fileOf(bytes, 'IMG 0042.JPG'), { orderId: order.id, caption: 'upper fade' }),
    );
    expect(added).toMatchObject({ outcome: 'added', rowVersion: 1 });
    expect(await only(shop, order.id)).toEqual({
      id: added.id,
      rowVersion: 1,
      orderId: order.id,
      orderNumber: order.number,
      bowId: await bowOf(shop, order.id),
      findingId: null,
      incidentId: null,
      shipmentId: null,
      about: 'bow',
      fileName: 'IMG 0042.JPG',
      mediaType: 'image/jpeg',
      bytes: bytes.length,
      widthPx: 160,
      heightPx: 240,
      takenAt: '2026-03-01T17:45:09',
      hasLocation: true,
      caption: 'upper fade',
      addedAt: expect.stringMatching(/^2026-03-02T09:00/),
      personName: 'Ben Marsh',
      struckReason: null,
    });
    const original = await attachmentImage(shop.owner, { id: added.id, size: 'original' });
    expect(Buffer.from(await original.arrayBuffer()).equals(bytes)).toBe(true);
    expect(original).toMatchObject({ name: 'IMG 0042.JPG', type: 'image/jpeg' });
    const [line] = await historyOf(shop.owner, order.id);
    expect(line).toMatchObject({ kind: 'file', summary: 'Added: photograph "upper fade"' });
  });

  test('PDF and messages are kept as they are', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    await addAttachment(shop.owner, input(fileOf(smallPdf, 'appraisal'), { orderId }));
    await addAttachment(shop.owner, input(fileOf(smallMail, 'It is on its way.pdf'), { orderId }));
    const page = Buffer.from('<html>not a page here</html>');
    await addAttachment(shop.owner, input(fileOf(page, 'page.html'), { orderId }));
    const files = await listAttachments(shop.owner, { orderId });
    expect(files.map((file) => [file.mediaType, file.fileName]).sort()).toEqual([
      ['application/pdf', 'appraisal.pdf'],
      ['message/rfc822', 'It is on its way.eml'],
      ['text/plain', 'page.html.txt'],
    ]);
    expect(files.every((file) => file.widthPx === null)).toBe(true);
  });

  test('a name full of traps is kept as words', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const trap = `C:\\Users\\..\\${'long '.repeat(60)}a:b\u0007*?\u202e.JPEG`;
    await addAttachment(shop.owner, input(fileOf(await jpegPicture(), trap), { orderId }));
    const { fileName } = await only(shop, orderId);
    expect(fileName).toMatch(/^long long [a-z ]*\.JPEG$/);
    expect(fileName.length).toBeLessThan(130);
  });

  test('a repeat of the same command changes nothing', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const once = input(fileOf(await jpegPicture(), 'a.jpg'), { orderId });
    const first = await addAttachment(shop.owner, once);
    expect(await addAttachment(shop.owner, once)).toEqual(first);
    await only(shop, orderId);
  });

  test('the same photograph dropped twice is there once, under whatever name', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const bytes = await jpegPicture();
    const first = await addAttachment(shop.owner, input(fileOf(bytes, 'a.jpg'), { orderId }));
    const again = await addAttachment(shop.owner, input(fileOf(bytes, 'b.jpg'), { orderId }));
    expect(again).toMatchObject({ outcome: 'there-already', id: first.id, rowVersion: 1 });
    expect(originals(shop)).toHaveLength(1);
    await only(shop, orderId);
  });

  test('two people dropping it at the same moment get one', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const bytes = await jpegPicture();
    const both = await Promise.all(
      ['a.jpg', 'b.jpg'].map((name) =>
        addAttachment(shop.owner, input(fileOf(bytes, name), { orderId })),
      ),
    );
    expect(both.map((each) => each.outcome).sort()).toEqual(['added', 'there-already']);
    await only(shop, orderId);
  });

  test('on another order it is a record of its own over the same file', async () => {
    const shop = await testShop();
    const bytes = await jpegPicture();
    for (const order of [await takeIn(shop), await takeIn(shop)]) {
      const result = await addAttachment(
        shop.owner,
        input(fileOf(bytes, 'a.jpg'), { orderId: order.id }),
      );
      expect(result.outcome).toBe('added');
    }
    expect(originals(shop)).toHaveLength(1);
  });
});

describe('where a file belongs', () => {
  test('a finding brings its order and bow along', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const findingId = await addCrack(shop, orderId);
    await addAttachment(
      shop.owner,
      input(fileOf(await jpegPicture(), 'a.jpg'), { findingId, about: 'finding' }),
    );
    const bowId = await bowOf(shop, orderId);
    expect(await only(shop, orderId)).toMatchObject({ orderId, bowId, findingId });
    expect(await listAttachments(shop.owner, { findingId })).toHaveLength(1);
  });

  test('a photograph of the order that is dropped on a finding is linked to it', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const file = fileOf(await jpegPicture(), 'a.jpg');
    const first = await addAttachment(shop.owner, input(file, { orderId }));
    const findingId = await addCrack(shop, orderId);
    const link = { orderId, findingId, about: 'finding' as const };
    const linked = await addAttachment(shop.owner, input(file, link));
    expect(linked).toEqual({ outcome: 'there-already', id: first.id, rowVersion: 2 });
    expect(await only(shop, orderId)).toMatchObject({ findingId, about: 'finding' });
    const other = await addCrack(shop, orderId);
    const second = await addAttachment(shop.owner, input(file, { ...link, findingId: other }));
    expect(second.outcome).toBe('added');
    expect(await listAttachments(shop.owner, { findingId })).toHaveLength(1);
    expect(await listAttachments(shop.owner, { findingId: other })).toHaveLength(1);
  });

  test('a bow lists the files of all its orders and its own', async () => {
    const shop = await testShop();
    const first = await takeIn(shop);
    const second = await takeIn(shop);
    const bowId = await bowOf(shop, first.id);
    const make = async (tint: string, change: Partial<Input>) =>
      addAttachment(shop.owner, input(fileOf(await jpegPicture({ tint }), 'a.jpg'), change));
    await make('#ffffff', { orderId: first.id });
    await make('#eeeeee', { bowId });
    await make('#dddddd', { orderId: second.id });
    const listed = await listAttachments(shop.owner, { bowId });
    expect(listed.map((file) => file.orderNumber).sort()).toEqual([first.number, null]);
    expect(await listAttachments(shop.owner, { orderId: first.id })).toHaveLength(1);
  });

  test('files of a box that was opened first follow the order to its bow', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    await addAttachment(
      shop.owner,
      input(fileOf(await jpegPicture(), 'box.jpg'), { orderId, about: 'packaging' }),
    );
    const { customer_id: customerId, row_version: rowVersion } = await shop.owner.read
      .selectFrom('shop_order')
      .selectAll()
      .where('id', '=', orderId)
      .executeTakeFirstOrThrow();
    const { id: bowId } = await addBow(shop.owner, {
      commandId: newCommandId(),
      customerId,
      ...bowFields,
      serial: 'H-119',
    });
    expect(await listAttachments(shop.owner, { bowId })).toEqual([]);
    await identifyBow(shop.owner, { commandId: newCommandId(), id: orderId, rowVersion, bowId });
    expect(await listAttachments(shop.owner, { bowId })).toHaveLength(1);
  });

  test('nowhere, unknown and contradicting places are refused and keep no file', async () => {
    const shop = await testShop();
    const first = await takeIn(shop);
    const second = await takeIn(shop);
    const findingId = await addCrack(shop, first.id);
    const file = fileOf(await jpegPicture(), 'a.jpg');
    const bowId = await bowOf(shop, second.id);
    for (const [place, code] of [
      [{}, 'BAD_INPUT'],
      [{ orderId: 'no-such' }, 'NOT_FOUND'],
      [{ bowId: 'no-such' }, 'NOT_FOUND'],
      [{ findingId: 'no-such' }, 'NOT_FOUND'],
      [{ incidentId: 'no-such' }, 'NOT_FOUND'],
      [{ shipmentId: 'no-such' }, 'NOT_FOUND'],
      [{ orderId: second.id, findingId }, 'CONFLICT'],
      [{ orderId: first.id, bowId }, 'CONFLICT'],
    ] as const) {
      await expect(addAttachment(shop.owner, input(file, place))).rejects.toMatchObject({ code });
    }
    expect(originals(shop)).toEqual([]);
    await expect(listAttachments(shop.owner, { bowId: 'no-such' })).rejects.toMatchObject({
      code: 'NOT_FOUND',
    });
  });
});

describe('refusals name the file and leave nothing', () => {
  test.each([
    ['a HEIC photograph', async () => heicHead, 'Save the photograph as JPEG'],
    ['a cut photograph', async () => (await jpegPicture()).subarray(0, 300), 'is damaged or cut'],
    ['25 MB and a byte', async () => Buffer.alloc(25 * 1024 * 1024 + 1), 'is larger than 25 MB'],
    ['an empty file', async () => Buffer.alloc(0), 'is empty'],
  ])('%s', async (_what, make, sentence) => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const adding = addAttachment(shop.owner, input(fileOf(await make(), 'limb.jpg'), { orderId }));
    await expect(adding).rejects.toMatchObject({
      code: 'BAD_INPUT',
      message: expect.stringMatching(
        new RegExp(`^limb\\.jpg ${sentence.startsWith('is') ? sentence : ''}`),
      ),
    });
    await expect(adding).rejects.toThrow(sentence);
    expect(await listAttachments(shop.owner, { orderId })).toEqual([]);
    expect(originals(shop)).toEqual([]);
  });

  test('the file after the two-hundredth of an order', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const first = input(fileOf(Buffer.from('Note 1'), 'note 1.txt'), { orderId });
    await addAttachment(shop.owner, first);
    shop.core.ready().database.writer.exec(
      `WITH RECURSIVE n (i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < 200)
       INSERT INTO attachment SELECT id || '-' || i, order_id, bow_id, finding_id, incident_id,
         shipment_id, about, file_name, media_type, sha256 || '-' || i, bytes, width_px, height_px,
         taken_at, has_location, caption, added_at, person_id, struck_reason, row_version
       FROM attachment, n`,
    );
    const last = input(fileOf(Buffer.from('Note 201'), 'note 201.txt'), { orderId });
    await expect(addAttachment(shop.owner, last)).rejects.toMatchObject({
      code: 'CONFLICT',
      message:
        'note 201.txt was not added: this order already has 200 files, the most it can hold.',
    });
    expect(await listAttachments(shop.owner, { orderId })).toHaveLength(200);
    // One that is there already is answered all the same.
    const known = { ...first, commandId: newCommandId() };
    expect((await addAttachment(shop.owner, known)).outcome).toBe('there-already');
  });
});

describe('a cut between file and record', () => {
  test('leaves the file, no record, and the same file can be added again', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const bytes = await jpegPicture();
    // The database refuses at the last moment, as a full disk would.
    shop.core
      .ready()
      .database.writer.exec(
        "CREATE TRIGGER cut BEFORE INSERT ON attachment BEGIN SELECT RAISE(ABORT, 'cut'); END",
      );
    const add = () => addAttachment(shop.owner, input(fileOf(bytes, 'a.jpg'), { orderId }));
    const before = (await historyOf(shop.owner, orderId)).length;
    await expect(add()).rejects.toThrow('cut');
    expect(await listAttachments(shop.owner, { orderId })).toEqual([]);
    expect(await historyOf(shop.owner, orderId)).toHaveLength(before);
    expect(originals(shop)).toHaveLength(1);
    shop.core.ready().database.writer.exec('DROP TRIGGER cut');
    expect((await add()).outcome).toBe('added');
    expect(originals(shop)).toHaveLength(1);
  });

  test('the next start keeps every file that a record names, and young orphans', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const bytes = await jpegPicture();
    const { id } = await addAttachment(shop.owner, input(fileOf(bytes, 'a.jpg'), { orderId }));
    const orphan = await shop.owner.attachments.put(Buffer.from('nobody names me'));
    await shop.core.close();
    const far = () => new Date(Date.now() + 200 * 86_400_000).toISOString();
    const soon = () => new Date(Date.now() + 10 * 86_400_000).toISOString();
    const path = shop.owner.attachments.pathOf(orphan);
    for (const [now, isKept] of [
      [soon, true],
      [far, false],
    ] as const) {
      const core = new Core({ dataFolder: shop.folder, now });
      await core.settled();
      const original = await attachmentImage(core.shop(), { id, size: 'original' });
      expect(original.size).toBe(bytes.length);
      await core.close();
      expect(existsSync(path)).toBe(isKept);
    }
  });
});

describe('pictures', () => {
  test('thumb and screen are made once and made again when they are gone', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const bytes = await avifPicture({ width: 2000, height: 1000 });
    const { id } = await addAttachment(shop.owner, input(fileOf(bytes, 'a.avif'), { orderId }));
    const width = async (size: 'thumb' | 'screen') => {
      const file = await attachmentImage(shop.owner, { id, size });
      expect(file.type).toBe('image/webp');
      return (await sharp(await file.arrayBuffer()).metadata()).width;
    };
    expect(await width('thumb')).toBe(320);
    expect(await width('screen')).toBe(1600);
    expect(await width('screen')).toBe(1600);
  });

  test('a PDF has none, and says so', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const { id } = await addAttachment(shop.owner, input(fileOf(smallPdf, 'a.pdf'), { orderId }));
    await expect(attachmentImage(shop.owner, { id, size: 'thumb' })).rejects.toThrow(
      'a.pdf is no picture. Open or save the file itself.',
    );
  });
});

describe('a copy to send', () => {
  test('has no location, keeps the original as it was, and is named for its order', async () => {
    const shop = await testShop();
    const { id: orderId, number } = await takeIn(shop);
    const bytes = await jpegPicture({ exif: gpsExif });
    const { id } = await addAttachment(
      shop.owner,
      input(fileOf(bytes, 'a.jpg'), { orderId, caption: 'upper fade / "belly"' }),
    );
    const copy = await copyToSend(shop.owner, { id });
    expect(copy).toMatchObject({ name: `${number} upper fade belly.jpg`, type: 'image/jpeg' });
    const metadata = await sharp(await copy.arrayBuffer()).metadata();
    expect(metadata.exif).toBeUndefined();
    const { sha256 } = await shop.owner.read
      .selectFrom('attachment')
      .select('sha256')
      .executeTakeFirstOrThrow();
    const kept = readFileSync(shop.owner.attachments.pathOf(sha256));
    expect(kept.equals(bytes)).toBe(true);
    expect((await sharp(kept).metadata()).exif).toBeDefined();
  });

  test('without a caption it is named for what it shows', async () => {
    const shop = await testShop();
    const { id: orderId, number } = await takeIn(shop);
    const bowId = await bowOf(shop, orderId);
    const file = fileOf(await jpegPicture(), 'a.jpg');
    const { id } = await addAttachment(shop.owner, input(file, { orderId, about: 'packaging' }));
    expect((await copyToSend(shop.owner, { id })).name).toBe(`${number} packaging.jpg`);
    const ofBow = await addAttachment(shop.owner, input(file, { bowId }));
    expect((await copyToSend(shop.owner, { id: ofBow.id })).name).toBe('the bow.jpg');
  });

  test.each([
    ['a PDF', smallPdf, 'a.pdf'],
    ['a message', smallMail, 'a.eml'],
  ])('%s is refused: what it hides cannot be taken out', async (_what, bytes, name) => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const { id } = await addAttachment(shop.owner, input(fileOf(bytes, name), { orderId }));
    await expect(copyToSend(shop.owner, { id })).rejects.toThrow(
      `${name} may carry hidden names or places`,
    );
  });
});

describe('describing and striking out', () => {
  test('caption and subject change, with a line of history', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const file = fileOf(await jpegPicture(), 'a.jpg');
    const { id, rowVersion } = await addAttachment(shop.owner, input(file, { orderId }));
    const change = { id, rowVersion, caption: 'lower tip', about: 'value' as const };
    await describeAttachment(shop.as('office'), { commandId: newCommandId(), ...change });
    expect(await only(shop, orderId)).toMatchObject({ caption: 'lower tip', about: 'value' });
    expect((await historyOf(shop.owner, orderId))[0]).toMatchObject({
      summary: 'Described: photograph "lower tip"',
    });
    await expect(
      describeAttachment(shop.owner, { commandId: newCommandId(), ...change }),
    ).rejects.toMatchObject({ code: 'STALE' });
  });

  test('a struck photograph stays, with its reason, and is not sent', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const file = fileOf(await jpegPicture(), 'a.jpg');
    const { id, rowVersion } = await addAttachment(shop.owner, input(file, { orderId }));
    const strike = (version: number) =>
      strikeOutAttachment(shop.as('bench'), {
        commandId: newCommandId(),
        id,
        rowVersion: version,
        reason: 'another bow',
      });
    await strike(rowVersion);
    expect(await only(shop, orderId)).toMatchObject({ struckReason: 'another bow' });
    expect((await attachmentImage(shop.owner, { id, size: 'original' })).size).toBe(file.size);
    expect((await historyOf(shop.owner, orderId))[0]).toMatchObject({
      summary: 'Struck out: photograph a.jpg',
      reason: 'another bow',
    });
    await expect(strike(2)).rejects.toMatchObject({ code: 'CONFLICT' });
    await expect(copyToSend(shop.owner, { id })).rejects.toThrow('a.jpg is struck out.');
    // Added again, it is a photograph like any other.
    expect((await addAttachment(shop.owner, input(file, { orderId }))).outcome).toBe('added');
  });
});
