import { AttachmentStore } from '../../../core/storage/attachments/store.ts';

/** Keeps one file of two megabytes after the other until it is killed. */
const [, , folder = ''] = process.argv;
const files = new AttachmentStore(folder, () => '2026-03-02T09:00:00.000Z');
for (let n = 0; ; n += 1) {
  await Promise.all([0, 1, 2].map((k) => files.put(Buffer.alloc(2_000_000, `file ${n}-${k} `))));
  if (n === 0) console.log('there');
}
