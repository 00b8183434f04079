import { svgFile } from './svgFile.ts';

const bytesOf = (dataUrl: string): Uint8Array<ArrayBuffer> => {
  const binary = atob(dataUrl.slice(dataUrl.indexOf(',') + 1));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
};

/**
 * The drawing as a picture.
 * @param scale pixels per unit of the drawing
 * @throws Error with a sentence where the browser cannot paint it
 */
export const pngFile = async (drawing: SVGSVGElement, scale = 3): Promise<Blob> => {
  const { text, width, height } = await svgFile(drawing);
  const picture = new Image();
  picture.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const paper = canvas.getContext('2d');
  if (!paper) throw new Error('This window cannot paint a picture. Save the drawing as SVG instead.');
  paper.drawImage(picture, 0, 0, canvas.width, canvas.height);
  // toBlob waits for seconds now and then where nothing is drawn on screen; toDataURL does not.
  return new Blob([bytesOf(canvas.toDataURL('image/png'))], { type: 'image/png' });
};
