import { expect, type Page } from './page.ts';
import { UnpackingDriver } from './unpacking-driver.ts';

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

  /** Follows a missing item of the arrival, which leads to the unpacking table. */
  async unpack(words: string): Promise<UnpackingDriver> {
    await this.follow(words);
    await expect(this.page.getByRole('region', { name: '1 Box and packaging' })).toBeVisible();
    return new UnpackingDriver(this.page);
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
    // The list grows shorter now: a click on its next item must not meet it while it moves.
    await this.gone(label);
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

  /** Asks for a consent that no gate names yet, from the list of consents. */
  async ask(label: string): Promise<void> {
    await this.page
      .getByRole('region', { name: 'Consents' })
      .getByRole('button', { name: /^Ask/ })
      .first()
      .click();
    const asking = this.page.getByRole('dialog', { name: 'Ask the customer' });
    // The dialog still grows until the proposed text stands in it.
    await expect(asking.getByLabel(/^Text the customer reads/)).not.toHaveValue('');
    await asking.getByLabel('What is asked').click();
    await this.page.getByRole('option', { name: label }).click();
    await this.finishAsking(label);
  }

  get weighing() {
    return this.page.getByRole('form', { name: 'Weigh' });
  }

  /** Follows the missing item and weighs. */
  async weigh(words: string, forceLbf: number): Promise<void> {
    await this.follow(words);
    await this.pull(forceLbf);
  }

  /** In the open form: the first pull is dropped, the rest average to the given force. */
  async typePulls(forceLbf: number): Promise<void> {
    const form = this.weighing;
    await form.getByLabel('Brace height').fill('7 1/4');
    await form.getByRole('textbox', { name: 'String', exact: true }).fill('shop string');
    for (const [row, force] of [forceLbf + 2, forceLbf - 0.1, forceLbf + 0.1].entries()) {
      await form.getByLabel(`Pull ${row + 1}, force`).fill(String(force));
    }
  }

  async pull(forceLbf: number): Promise<void> {
    await this.typePulls(forceLbf);
    await this.weighing.getByRole('button', { name: 'Record the weighing' }).click();
    await expect(this.weighing).toBeHidden();
  }

  async move(stage: string): Promise<void> {
    await this.next.getByRole('button', { name: `Move to ${stage}` }).click();
  }

  /** The stage that the order stands in, as the timeline says it. */
  async standsIn(stage: string): Promise<void> {
    await expect(this.page.locator('[aria-current="step"]')).toContainText(stage);
  }
}
