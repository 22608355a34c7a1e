/** Every web page: what the option to mark recipes asks for, and nothing else. */
export const ALL_PAGES = { origins: ['*://*/*'] };
