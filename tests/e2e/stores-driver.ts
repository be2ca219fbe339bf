import type { Locator } from 'playwright';
import { expect, type Page } from './page.ts';

/** What somebody does at the stores, on the screen alone. */
export class StoresDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** A keyboard-wedge scanner: quicker than a hand, ended by Enter. */
  async scan(text: string): Promise<void> {
    // All keys are sent before the first is answered: a busy machine must not make a hand of it.
    await Promise.all([...text, 'Enter'].map((key) => this.page.keyboard.press(key)));
  }

  /** Nothing has the focus, as when somebody scans while walking by. */
  async leaveFields(): Promise<void> {
    await this.page.locator('h1').focus();
  }

  form(name: string | RegExp): Locator {
    return this.page.getByRole('form', { name });
  }

  /** The panel of that title. */
  panel(name: string): Locator {
    return this.page.getByRole('region', { name, exact: true });
  }

  async choose(within: Locator, label: string, option: string | RegExp): Promise<void> {
    await within.getByRole('combobox', { name: label }).click();
    await this.page.getByRole('option', { name: option }).click();
  }

  /** Receives on the page of a consumable, where the form is open. */
  async receive(fields: Record<string, string>): Promise<void> {
    const form = this.form(/^Receive/);
    for (const [label, value] of Object.entries(fields)) {
      await form.getByLabel(label, { exact: false }).first().fill(value);
    }
    await form.getByRole('button', { name: 'Receive', exact: true }).click();
    await expect(form).toBeHidden();
  }
}
