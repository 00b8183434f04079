export interface ToastMessage {
  readonly sentence: string;
  readonly action?: { readonly label: string; readonly run: () => void };
}

const SHOWN_FOR = 12_000;

/** One short word from the program at the foot of the window, with a way back where there is one. */
export class Toast {
  message = $state.raw<ToastMessage | null>(null);
  #timer: ReturnType<typeof setTimeout> | undefined;

  say(message: ToastMessage): void {
    clearTimeout(this.#timer);
    this.message = message;
    this.#timer = setTimeout(() => (this.message = null), SHOWN_FOR);
  }
  /** Keeps the message while it is pointed at or focused. */
  hold(): void {
    clearTimeout(this.#timer);
  }
  dismiss(): void {
    clearTimeout(this.#timer);
    this.message = null;
  }
}

export const toast = new Toast();
