/** Hands a file to the user: the browser's or the window's own download. */
export const saveFile = (fileName: string, content: Blob): void => {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};

/** A name that every file system takes. */
export const fileNameOf = (name: string, ending: string): string => {
  const plain = name
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  return `${plain || 'lullwright'}.${ending}`;
};
