import { changed, id, instant, line, requiredLine, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';

export const findingGrade = z.enum(['cosmetic', 'watch', 'stop']);

export const finding = z.object({
  id,
  rowVersion,
  grade: findingGrade,
  place: line(200),
  note: text(1000),
  foundAt: instant,
  foundBy: line(120),
  resolvedAt: instant.nullable(),
  resolvedHow: text(1000).nullable(),
});
export type Finding = z.infer<typeof finding>;

export const findings = {
  add: command()
    .input(
      commandInput({
        orderId: id,
        grade: findingGrade,
        place: requiredLine(200),
        note: text(1000),
      }),
    )
    .output(changed),
  /** A stop finding is resolved by repair and a second look, never by a signature. */
  resolve: command()
    .input(commandInput({ id, rowVersion, how: text(1000).min(3, 'Say what was done and seen.') }))
    .output(changed),
};
