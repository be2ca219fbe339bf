import { expect, type Page } from './page.ts';

/** Acts on the order page as a person would, by the words on the screen. */
export class OrderDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  get next() {
    return this.page.getByRole('region', { name: 'Next step' });
  }

  async missing(): Promise<string[]> {
    return this.next.getByRole('listitem').allInnerTexts();
  }

  /** Follows the link of the missing item that holds these words. */
  async follow(words: string): Promise<void> {
    await this.next.getByRole('listitem').filter({ hasText: words }).getByRole('button').click();
  }

  async gone(words: string): Promise<void> {
    await expect(this.next.getByRole('listitem').filter({ hasText: words })).toHaveCount(0);
  }

  /** Records the entry that the missing item asks for. */
  async record(words: string, note: string): Promise<void> {
    await this.follow(words);
    const form = this.page.getByRole('form', { name: /^Record:/ });
    await form.getByLabel('Note').fill(note);
    await form.getByRole('button', { name: 'Record', exact: true }).click();
    await this.gone(words);
  }

  /** Asks the customer and writes down a yes by phone. */
  async consent(label: string): Promise<void> {
    await this.follow(label);
    await this.finishAsking(label);
  }

  /** In the open dialog: asks as proposed, then writes down a yes by phone. */
  async finishAsking(label: string): Promise<void> {
    const asking = this.page.getByRole('dialog', { name: 'Ask the customer' });
    await asking.getByLabel('How it is asked').fill('phone 555 0142');
    await asking.getByRole('button', { name: 'Record that this was asked' }).click();
    await expect(asking).toBeHidden();
    await this.page.getByRole('button', { name: `Record the answer: ${label}` }).click();
    const answering = this.page.getByRole('dialog', { name: 'Record the answer' });
    await answering.getByLabel(/^Granted/).check();
    await answering.getByLabel('Words agreed').fill('Yes, do it just like that.');
    await answering.getByRole('button', { name: 'Record the answer' }).click();
    await expect(answering).toBeHidden();
  }

  /** Weighs with the first pull dropped; the rest average to the given force. */
  async weigh(words: string, forceLbf: number): Promise<void> {
    await this.follow(words);
    const form = this.page.getByRole('form', { name: 'Weigh' });
    await form.getByLabel('Brace height').fill('7 1/4');
    await form.getByLabel('String', { exact: false }).first().fill('shop string');
    for (const [row, force] of [forceLbf + 2, forceLbf - 0.1, forceLbf + 0.1].entries()) {
      await form.getByLabel(`Pull ${row + 1}, force`).fill(String(force));
    }
    await form.getByRole('button', { name: 'Record the weighing' }).click();
    await expect(form).toBeHidden();
  }

  async move(stage: string): Promise<void> {
    await this.next.getByRole('button', { name: `Move to ${stage}` }).click();
  }

  /** The stage that the order stands in, as the timeline says it. */
  async standsIn(stage: string): Promise<void> {
    await expect(this.page.locator('[aria-current="step"]')).toContainText(stage);
  }
}
