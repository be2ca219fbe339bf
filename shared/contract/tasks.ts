import { changed, day, id, instant, line, requiredLine, rowVersion } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';

/** A dated reminder, of one order or of none. */
export const task = z.object({
  id,
  rowVersion,
  orderId: id.nullable(),
  what: requiredLine(400),
  dueOn: day,
  forPersonId: id.nullable(),
  forPersonName: line(120).nullable(),
  createdAt: instant,
  createdBy: line(120),
  doneAt: instant.nullable(),
  doneBy: line(120).nullable(),
  doneNote: line(400),
});
export type Task = z.infer<typeof task>;

const taskFields = {
  what: requiredLine(400),
  dueOn: day,
  /** Nobody in particular where it is null: whoever works there. */
  forPersonId: id.nullable(),
};

export const tasks = {
  add: command()
    .input(commandInput({ ...taskFields, orderId: id.nullable() }))
    .output(changed),
  change: command()
    .input(commandInput({ id, rowVersion, ...taskFields }))
    .output(changed),
  /** The note may stay empty. */
  done: command()
    .input(commandInput({ id, rowVersion, note: line(400) }))
    .output(changed),
  reopen: command().input(commandInput({ id, rowVersion })).output(changed),
};
