/** The one version that counts for records, trial files and the database. It rises by one with each migration. */
export const dataVersion = 3
