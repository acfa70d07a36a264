/// <reference types="vite-plugin-pwa/vanillajs" />
/** The version in package.json, set by the build. */
declare const __APP_VERSION__: string
