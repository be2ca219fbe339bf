/** Forms of the section, by the gate's item they put right. */
export const finishForms = ['finish-system', 'last-grit', 'air'] as const;
export type FinishForm = (typeof finishForms)[number];

/** What an asking opens here; null where it is put right in the finish room or by time alone. */
export function formFor(opens: string | null): FinishForm | null {
  return finishForms.find((form) => form === opens) ?? null;
}
