import sharp from 'sharp';
import { expect, test } from 'vitest';
import { demoBows } from '../../../demo-data/cast/bows.ts';
import { subjectNames, takePhotograph } from '../../../demo-data/pictures/pictures.ts';

const [bow] = demoBows.values();

test.each(subjectNames)('a photograph of: %s', { timeout: 60_000 }, async (subject) => {
  if (bow === undefined) throw new Error('no bow');
  const taken = await takePhotograph(subject, bow.look, 'test');
  const { width, height, format, exif } = await sharp(taken).metadata();
  expect({ width, height, format }).toEqual({ width: 1000, height: 750, format: 'jpeg' });
  expect(exif).toBeUndefined();
  // An empty or torn picture is nearly one colour.
  const { channels } = await sharp(taken).stats();
  for (const { stdev } of channels.slice(0, 3)) expect(stdev).toBeGreaterThan(12);
});

test('the same picture for the same name, another for another', { timeout: 60_000 }, async () => {
  if (bow === undefined) throw new Error('no bow');
  const [first, same, other] = await Promise.all(
    ['a', 'a', 'b'].map((name) => takePhotograph('box', bow.look, name)),
  );
  expect(first?.equals(same ?? Buffer.of())).toBe(true);
  expect(first?.equals(other ?? Buffer.of())).toBe(false);
});
