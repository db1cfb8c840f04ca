/** Path of the browser that looks at reports; undefined where there is none. */
export declare function findBrowser(): string | undefined;
