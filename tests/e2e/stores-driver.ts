import type { Locator } from 'playwright';
import { expect, type Page } from './page.ts';

/** From one key of a scanner to the next. */
const scannedMs = 8;

/** What somebody does at the stores, on the screen alone. */
export class StoresDriver {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** A keyboard-wedge scanner: quicker than a hand, ended by Enter. */
  async scan(text: string): Promise<void> {
    const keyboard = await this.page.context().newCDPSession(this.page);
    const start = Date.now() / 1000;
    for (const [place, key] of [...text, 'Enter'].entries()) {
      // Each key carries its time: a busy machine must not make a hand of a scanner.
      const timestamp = start + (place * scannedMs) / 1000;
      const sent =
        key === 'Enter'
          ? { key, code: key, text: '\r', windowsVirtualKeyCode: 13, timestamp }
          : { key, text: key, timestamp };
      await keyboard.send('Input.dispatchKeyEvent', { type: 'keyDown', ...sent });
      await keyboard.send('Input.dispatchKeyEvent', { type: 'keyUp', key, timestamp });
    }
    await keyboard.detach();
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
