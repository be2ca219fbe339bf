export interface TaskFields {
  what: string;
  dueOn: string;
  forPersonId: string | null;
}

/** What is wrong with a task as it stands, by field; empty when it may be sent. */
export function taskErrors(fields: TaskFields): Partial<Record<keyof TaskFields, string>> {
  return {
    ...(fields.what.trim() === '' ? { what: 'Say what is to be done.' } : {}),
    ...(fields.dueOn === '' ? { dueOn: 'Give a day.' } : {}),
  };
}
