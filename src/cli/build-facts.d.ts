/** The version in package.json, set when the command line is bundled. */
declare const __APP_VERSION__: string
