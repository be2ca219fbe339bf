/** Words as one line of a table or a paragraph: no line breaks, no blanks at the ends. */
export const oneLine = (text: string) => text.trim().replaceAll(/\s+/g, ' ');
