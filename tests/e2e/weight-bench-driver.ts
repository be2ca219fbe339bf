import { expect, type Page } from './page.ts';

/** Acts at the desk view of the weight bench, by the words on the screen. */
export class WeightBenchDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get ways() {
    return this.page.getByRole('region', { name: 'Ways side by side' });
  }

  banner(words: RegExp) {
    return this.page.getByRole('status').filter({ hasText: words });
  }

  /** Accepts one way, with a reason where the drop is a big one. */
  async accept(way: string, because: string): Promise<void> {
    await this.ways.getByRole('button', { name: `Accept ${way}`, exact: true }).click();
    const dialog = this.page.getByRole('dialog');
    const reason = dialog.getByLabel('Why is so big a drop right for this bow?');
    await expect(dialog.getByText('Stop at', { exact: true })).toBeVisible();
    if (await reason.isVisible()) await reason.fill(because);
    await dialog.getByRole('button', { name: 'Accept this plan' }).click();
    await expect(dialog).toBeHidden();
  }
}
