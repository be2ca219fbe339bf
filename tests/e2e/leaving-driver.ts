import { readFileSync } from 'node:fs';
import { expect, type Page } from './page.ts';

export interface ParcelWords {
  carrier: string;
  lengthIn: string;
  widthIn: string;
  heightIn: string;
  weightLb: string;
  tracking: string;
}

/** A long narrow box that a parcel post takes. */
export const bowBox: ParcelWords = {
  carrier: 'Postal ground',
  lengthIn: '70',
  widthIn: '5',
  heightIn: '5',
  weightLb: '4.5',
  tracking: '9400 1',
};

/** Acts on the last sections of the order page: final check, belongings, parcel and papers. */
export class LeavingDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get check() {
    return this.page.getByRole('region', { name: 'Final check' });
  }

  get shipping() {
    return this.page.getByRole('region', { name: 'Packing and shipping' });
  }

  /** Ticks every row that is not recorded yet, and records them together. */
  async allInOrder(): Promise<void> {
    const form = this.page.getByRole('form', { name: 'Final check' });
    const buttons = form.getByRole('button', { name: /^In order:/ });
    await expect(buttons.first()).toBeVisible();
    const many = await buttons.count();
    for (let row = 0; row < many; row += 1) await buttons.nth(row).click();
    await form.getByRole('button', { name: `Record ${many} checks` }).click();
    await expect(this.check).toContainText(`${many} of ${many} in order`);
  }

  async backInTheBox(...things: readonly string[]): Promise<void> {
    for (const thing of things) {
      await this.check
        .getByRole('button', { name: `Back in the box: ${thing}`, exact: true })
        .click();
      await expect(
        this.check.getByRole('button', { name: `Not in the box after all: ${thing}`, exact: true }),
      ).toBeVisible();
    }
  }

  /** Types the parcel and stops before it is recorded, so that a test can read the assessment. */
  async typeParcel(words: ParcelWords): Promise<void> {
    await this.shipping.getByRole('button', { name: 'Measure and record the parcel' }).click();
    const form = this.page.getByRole('form', { name: 'Parcel going out' });
    await form.getByRole('combobox', { name: 'Carrier' }).click();
    await this.page.getByRole('option', { name: words.carrier }).click();
    for (const [label, value] of [
      ['Length, inches', words.lengthIn],
      ['Width, inches', words.widthIn],
      ['Height, inches', words.heightIn],
      ['Weight, pounds', words.weightLb],
      ['Tracking number', words.tracking],
    ] as const) {
      await form.getByLabel(label).fill(value);
    }
    await expect(form).toContainText(/ (takes|does not take) this parcel/);
  }

  async parcel(words: ParcelWords = bowBox): Promise<void> {
    await this.typeParcel(words);
    const form = this.page.getByRole('form', { name: 'Parcel going out' });
    await form.getByRole('button', { name: 'Record the parcel' }).click();
    await expect(form).toBeHidden();
    await expect(this.shipping).toContainText(words.tracking);
  }

  get paper() {
    return this.page.getByRole('dialog');
  }

  async openPaper(name: 'Shipping tag' | 'Return tag' | 'Work order'): Promise<void> {
    const papers = this.page.getByRole('region', { name: 'Papers' });
    const group = name === 'Work order' ? 'For the bench' : 'For the parcel';
    await papers.getByRole('button', { name: group }).click();
    // The menu is not inside the section on the page.
    await this.page.getByRole('menuitem', { name }).click();
    await expect(this.paper.locator('canvas').first()).toBeVisible();
  }

  /** Saves the open paper, and answers its name and bytes as the browser got them. */
  async savePaper(): Promise<{ name: string; bytes: Uint8Array }> {
    const downloading = this.page.waitForEvent('download');
    await this.paper.getByRole('button', { name: 'Save' }).click();
    const download = await downloading;
    return {
      name: download.suggestedFilename(),
      bytes: new Uint8Array(readFileSync(await download.path())),
    };
  }

  /** Prints the open paper, which shows it in a tab of its own, and closes the dialog. */
  async printPaper(): Promise<void> {
    const opening = this.page.context().waitForEvent('page');
    await this.paper.getByRole('button', { name: 'Print' }).click();
    await (await opening).close();
    await this.page.keyboard.press('Escape');
    await expect(this.page.getByRole('region', { name: 'Papers' })).toContainText(/printed/);
  }
}
