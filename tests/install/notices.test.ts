import { expect, test } from 'vitest';
import { committedNotices, notices } from './notices.ts';

test('the third-party notices name every package of the lock file', () => {
  expect(committedNotices()).toBe(notices());
});

test('every package says under which licence it comes', () => {
  expect(notices()).not.toContain('see its folder');
});
