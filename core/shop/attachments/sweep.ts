import type { OpenShop } from '../../storage/context.ts';

/** Removes old files that no record names. Runs beside the day's work and never stops the shop. */
export async function sweepAttachments(shop: OpenShop): Promise<void> {
  try {
    const removed = await shop.attachments.sweep(async (sha256) => {
      const row = await shop.read
        .selectFrom('attachment')
        .select('id')
        .where('sha256', '=', sha256)
        .executeTakeFirst();
      return row !== undefined;
    });
    if (removed.length > 0) shop.log.info({ removed: removed.length }, 'attachments swept');
  } catch (error) {
    shop.log.warn({ err: error }, 'attachments not swept');
  }
}
