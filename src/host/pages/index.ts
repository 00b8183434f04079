export { readPage, type Page } from './readPage.ts';
export { securityHeaders } from './securityHeaders.ts';
