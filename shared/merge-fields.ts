/** A field between double braces; blanks inside are taken as typed by a person. */
const field = /\{\{\s*([^{}]*?)\s*\}\}/g;

/** Names of the fields a text uses, each once, in their order. */
export function fieldsIn(template: string): string[] {
  return [...new Set([...template.matchAll(field)].map(([, name = '']) => name))];
}

/**
 * What is wrong with the fields of a text, in a sentence; null where nothing is.
 * There is no logic in it: a field stands for one value, and that is all.
 */
export function fieldTrouble(template: string, allowed: readonly string[]): string | null {
  const list = `There are: ${allowed.map((name) => `{{${name}}}`).join(', ')}.`;
  const unknown = fieldsIn(template).find((name) => !allowed.includes(name));
  if (unknown !== undefined) return `There is no field {{${unknown}}} here. ${list}`;
  if (/\{\{|\}\}/.test(template.replaceAll(field, ''))) {
    return `A field begins with {{ and ends with }}. ${list}`;
  }
  return null;
}

/**
 * Puts the values in. A value is never read as a template itself.
 * @throws Error for a field without a value: a text with fields was checked before it was kept.
 */
export function merged(template: string, values: Readonly<Record<string, string>>): string {
  return template.replaceAll(field, (_, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) throw new Error(`no value for the field ${name}`);
    return value;
  });
}
