/** Under what the link of the kitchen's hub is kept on this device, for the next table. It lets in, so no backup has it. */
export const hubKey = 'hub'
