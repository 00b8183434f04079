/** The one channel for calls, and the one on which the menu speaks to the page. */
export const CALL_CHANNEL = 'lullwright:call';
export const ACTION_CHANNEL = 'lullwright:action';

/** The one method that the shell answers itself. */
export const PRINT_METHOD = 'print';

/** What a menu item asks the page to do. */
export type MenuAction =
  'new-project' | 'open-project' | 'import-project' | 'export-project' | 'print' | 'undo' | 'redo' | 'show-tour';
