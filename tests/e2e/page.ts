export type { Page } from 'playwright';
export { expect } from 'playwright/test';
