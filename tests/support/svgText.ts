import { TONES, type Drawing, type Shape, type Tone } from '../../renderer/drawings/shapes.ts';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
const short = (value: number): string => String(Math.round(value * 100) / 100);
const ink = (tone: Tone): string => TONES[tone].paper;

const element = (shape: Shape): string => {
  const [x, y] = shape.kind === 'line' ? shape.from : shape.at;
  switch (shape.kind) {
    case 'line':
      return `<path d="M${short(x)},${short(y)}L${shape.to.map(short).join(',')}" stroke="${ink(shape.tone)}" stroke-width="${shape.width ?? 1}"${shape.dash ? ` stroke-dasharray="${shape.dash}"` : ''} fill="none"/>`;
    case 'cross': {
      const r = shape.radius;
      return `<path d="M${short(x - r)},${short(y - r)}l${2 * r},${2 * r}m0,${-2 * r}l${-2 * r},${2 * r}" stroke="${ink(shape.tone)}" fill="none"/>`;
    }
    case 'box':
      return `<rect x="${short(x)}" y="${short(y)}" width="${short(shape.width)}" height="${short(shape.height)}" ${shape.hollow ? `fill="none" stroke="${ink(shape.tone)}"` : `fill="${ink(shape.tone)}"`}/>`;
    case 'dot':
      return `<circle cx="${short(x)}" cy="${short(y)}" r="${shape.radius}" ${shape.hollow ? `fill="none" stroke="${ink(shape.tone)}"` : `fill="${ink(shape.tone)}"`}/>`;
    case 'text':
      return `<text x="${short(x)}" y="${short(y)}" font-size="${shape.size}" text-anchor="${shape.anchor}" fill="${ink(shape.tone)}"${shape.upwards ? ` transform="rotate(-90 ${short(x)} ${short(y)})"` : ''}>${escaped(shape.text)}</text>`;
  }
};

/** A drawing as an SVG file that stands by itself. @param title what it shows */
export const svgText = ({ width, height, shapes }: Drawing, title: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif">
<title>${escaped(title)}</title>
<rect width="100%" height="100%" fill="#fffefb"/>
${shapes.map(element).join('\n')}
</svg>
`;
