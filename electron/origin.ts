/** The page's own scheme: a secure origin of its own that no web server can take. */
export const SCHEME = 'app';
export const ORIGIN = 'app://lullwright';
export const START_PAGE = `${ORIGIN}/index.html`;

export const isOwnPage = (url: string): boolean => url.startsWith(`${ORIGIN}/`);
