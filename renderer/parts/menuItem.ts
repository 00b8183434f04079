export interface MenuItem {
  readonly label: string;
  readonly onselect: () => void;
  readonly disabled?: boolean;
  /** keys that do the same, for example "Ctrl+Z" */
  readonly keys?: string;
  /** a thin line above */
  readonly apart?: boolean;
}
