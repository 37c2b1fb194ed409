/** Where the ear pack lies, beside the page. */
export const earPlace = "./ear/"
