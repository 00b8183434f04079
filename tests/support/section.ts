const marks = (name: string): { open: string; close: string } => ({
  open: `<!-- ${name} -->`,
  close: `<!-- /${name} -->`,
});

/** The text between `<!-- name -->` and `<!-- /name -->`. @throws RangeError where a mark is missing */
export const section = (text: string, name: string): string => {
  const { open, close } = marks(name);
  const [start, end] = [text.indexOf(open), text.indexOf(close)];
  if (start < 0 || end < start) throw new RangeError(`the text has no section marked ${open} … ${close}`);
  return text.slice(start + open.length, end).trim();
};

/** The text with that section replaced. */
export const withSection = (text: string, name: string, content: string): string => {
  section(text, name);
  const { open, close } = marks(name);
  const head = text.slice(0, text.indexOf(open) + open.length);
  return `${head}\n\n${content.trim()}\n\n${text.slice(text.indexOf(close))}`;
};
