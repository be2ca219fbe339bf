import type { z } from '../../shared/zod.ts';

type Issue = Parameters<z.core.$ZodErrorMap>[0];

/** The contract's limits in plain words, where the schema itself says nothing. */
function plainWords(issue: Issue): string {
  switch (issue.code) {
    case 'too_small':
      return issue.origin === 'number' ? `At least ${issue.minimum}.` : 'This may not be empty.';
    case 'too_big':
      return issue.origin === 'number'
        ? `At most ${issue.maximum}.`
        : `At most ${issue.maximum} characters.`;
    case 'invalid_type':
      return issue.expected === 'number' || issue.expected === 'int'
        ? 'Give a number.'
        : 'This is needed.';
    case 'invalid_value':
      return 'Choose one of the answers.';
    case 'invalid_format':
      return issue.format === 'date' ? 'Give a day.' : 'This is not written as it should be.';
    default:
      return 'This is not right.';
  }
}

/** What is wrong, by field path (`address.city`). Empty when the value fits the schema. */
export function fieldErrors(schema: z.ZodType, value: unknown): Record<string, string> {
  const read = schema.safeParse(value, { error: plainWords });
  if (read.success) return {};
  const errors: Record<string, string> = {};
  for (const issue of read.error.issues) errors[issue.path.join('.')] ??= issue.message;
  return errors;
}

/** The part of the errors that belongs to one group of fields, without the group's name. */
export function errorsUnder(errors: Record<string, string>, group: string): Record<string, string> {
  const start = `${group}.`;
  return Object.fromEntries(
    Object.entries(errors)
      .filter(([path]) => path.startsWith(start))
      .map(([path, text]) => [path.slice(start.length), text]),
  );
}
