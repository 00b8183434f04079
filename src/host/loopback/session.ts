import { randomBytes, timingSafeEqual } from 'node:crypto';

const equal = (given: string, expected: string): boolean => {
  const a = Buffer.from(given);
  const b = Buffer.from(expected);
  return a.length === b.length && timingSafeEqual(a, b);
};

/** One run's secret: handed over once in the first address, then kept by the browser as a cookie. */
export interface Session {
  readonly token: string;
  readonly admits: (token: string) => boolean;
  readonly setCookie: (port: number) => string;
  readonly holdsCookie: (header: string | undefined, port: number) => boolean;
}

/** Cookies do not tell ports apart, so the name carries the port: two runs do not put each other out. */
const cookieName = (port: number): string => `lullwright-${port}`;

export const createSession = (): Session => {
  const token = randomBytes(24).toString('base64url');
  const cookie = randomBytes(24).toString('base64url');
  return {
    token,
    admits: (given) => equal(given, token),
    setCookie: (port) => `${cookieName(port)}=${cookie}; HttpOnly; SameSite=Strict; Path=/`,
    holdsCookie: (header, port) =>
      (header ?? '').split(';').some((pair) => {
        const [name, value] = pair.trim().split('=');
        return name === cookieName(port) && equal(value ?? '', cookie);
      }),
  };
};
