import { expect, type Page } from './page.ts';

/** Acts on the bench's own sections of the order page: its log and the limbs measured. */
export class BenchDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get log() {
    return this.page.getByRole('region', { name: 'Bench log' });
  }

  get entry() {
    return this.page.getByRole('form', { name: /^Record:/ });
  }

  /** Writes an entry that the log offers, whether a gate asks for it or not. */
  async write(label: string, note = ''): Promise<void> {
    await this.log.getByRole('button', { name: 'Record an entry' }).click();
    await this.entry.getByLabel('What').click();
    await this.page.getByRole('option', { name: label, exact: true }).click();
    await this.entry.getByLabel('Note').fill(note);
    await this.entry.getByRole('button', { name: 'Record', exact: true }).click();
  }

  /** Writes an entry that stands. */
  async noted(label: string, note: string): Promise<void> {
    await this.write(label, note);
    await expect(this.entry).toBeHidden();
  }

  /** Widths in inches and thicknesses in thousandths along both limbs, in the form that is open. */
  async measure(stations: readonly { width: string; thou: string }[]): Promise<void> {
    const form = this.page.getByRole('form', { name: 'Measure the limbs' });
    for (const [index, { width, thou }] of stations.entries()) {
      const row = form.getByRole('group', { name: `Station ${index + 1}` });
      for (const limb of ['Upper', 'Lower']) {
        await row.getByLabel(`${limb} width`, { exact: true }).fill(width);
        await row.getByLabel(`${limb} thickness`, { exact: true }).fill(thou);
      }
    }
    await form.getByRole('button', { name: 'Record as a new version' }).click();
    await expect(form).toBeHidden();
  }
}
