/** Waiting that lasts longer than an eye blink, ms, is shown. */
const BLINK = 150;

/** Whether something awaited has been awaited for so long that what stands in its place is shown greyed. */
export class Lateness {
  late = $state(false);
  #timer: ReturnType<typeof setTimeout> | undefined;

  wait(): void {
    this.#timer ??= setTimeout(() => (this.late = true), BLINK);
  }
  arrived(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.late = false;
  }
}
