/** Letters that only the extended cut of a typeface has. */
const EXTENDED = /[\u0100-\u024f\u1e00-\u1eff]/;

const unquoted = (family: string): string => family.trim().replace(/^["']|["']$/g, '');

const asData = async (address: string): Promise<string> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the typeface at ${address} did not come`);
  const bytes = new Uint8Array(await answer.arrayBuffer());
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(binary)}`;
};

const rules = (): readonly CSSFontFaceRule[] =>
  [...document.styleSheets].flatMap((sheet) =>
    [...sheet.cssRules].filter((rule): rule is CSSFontFaceRule => rule instanceof CSSFontFaceRule),
  );

/** Where the typeface lies, read against the sheet that names it. */
const addressOf = (rule: CSSFontFaceRule): string | null => {
  const [, path] = /url\(["']?([^"')]+)["']?\)/.exec(rule.style.getPropertyValue('src')) ?? [];
  return path === undefined ? null : new URL(path, rule.parentStyleSheet?.href ?? document.baseURI).href;
};

/**
 * The typefaces of a drawing as rules that carry them along, so that a saved drawing looks the same on a machine without
 * them. The first of each list of families counts; the later ones are what to fall back on.
 * @param used lists of families with the weights they are used in
 * @param text all letters of the drawing
 */
export const fontFaces = async (
  used: readonly { readonly families: string; readonly weight: string }[],
  text: string,
): Promise<string> => {
  const wanted = new Set(used.map(({ families, weight }) => `${unquoted(families.split(',')[0] ?? '')} ${weight}`));
  const faces = rules().flatMap((rule) => {
    const family = unquoted(rule.style.getPropertyValue('font-family'));
    const weight = rule.style.getPropertyValue('font-weight') || '400';
    const address = addressOf(rule);
    const extended = rule.style.getPropertyValue('unicode-range') !== '';
    if (address === null || !wanted.has(`${family} ${weight}`) || (extended && !EXTENDED.test(text))) return [];
    const range = extended ? `unicode-range:${rule.style.getPropertyValue('unicode-range')};` : '';
    return [{ family, weight, address, range }];
  });
  const written = await Promise.all(
    faces.map(
      async ({ family, weight, address, range }) =>
        `@font-face{font-family:"${family}";font-weight:${weight};${range}src:url(${await asData(address)}) format("woff2")}`,
    ),
  );
  return written.join('');
};
