export type { Page } from 'playwright';

import { expect as playwrightExpect } from 'playwright/test';

/** Patient enough for two programs and two browsers on two cores. */
export const expect = playwrightExpect.configure({ timeout: 15_000 });
