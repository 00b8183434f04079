import { fontFaces } from './fontFaces.ts';

const PRESENTATION = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'opacity',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
  'visibility',
  'paint-order',
] as const;

/** What only the screen and its readers have use for. */
const SCREEN_ONLY = [
  'class',
  'style',
  'tabindex',
  'role',
  'aria-describedby',
  'aria-pressed',
  'aria-haspopup',
] as const;

const size = (drawing: SVGSVGElement): { width: number; height: number } => {
  const box = drawing.viewBox.baseVal;
  if (box.width > 0) return { width: box.width, height: box.height };
  const shown = drawing.getBoundingClientRect();
  return { width: shown.width, height: shown.height };
};

/**
 * The drawing as it is shown, as a file of its own: what the style sheets say is written into the elements as
 * presentation attributes, the typefaces are carried along, and the ground is laid under it. Where a typeface does not
 * come, the drawing is saved without it: the names and the plain letters to fall back on stand in the file.
 */
export const svgFile = async (drawing: SVGSVGElement): Promise<{ text: string; width: number; height: number }> => {
  const lettering = [...drawing.querySelectorAll('text, tspan')].map((element) => {
    const style = getComputedStyle(element);
    return { families: style.getPropertyValue('font-family'), weight: style.getPropertyValue('font-weight') };
  });
  const faces = await fontFaces(lettering, drawing.textContent).catch(() => '');
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const shown = [drawing, ...drawing.querySelectorAll('*')];
  const copied = [copy, ...copy.querySelectorAll('*')];
  shown.forEach((element, index) => {
    const style = getComputedStyle(element);
    const target = copied[index];
    for (const name of PRESENTATION) {
      const value = style.getPropertyValue(name);
      if (value) target?.setAttribute(name, value);
    }
    for (const name of SCREEN_ONLY) target?.removeAttribute(name);
  });
  // handles and hit areas belong to the screen
  for (const element of copy.querySelectorAll('[data-screen-only]')) element.remove();
  const { width, height } = size(drawing);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ground.setAttribute('width', '100%');
  ground.setAttribute('height', '100%');
  ground.setAttribute('fill', getComputedStyle(document.documentElement).getPropertyValue('--sheet') || '#fff');
  copy.prepend(ground);
  if (faces) {
    const sheet = document.createElementNS('http://www.w3.org/2000/svg', 'style');
    sheet.textContent = faces;
    copy.prepend(sheet);
  }
  return { text: new XMLSerializer().serializeToString(copy).replaceAll('<!---->', ''), width, height };
};
