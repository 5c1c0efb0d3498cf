package construct

import "ellwand/pieces/measure"

// Cm words a length in mm for a sentence: "41.5 cm".
func Cm(mm float64) string { return measure.Length(mm).Format(measure.Centimetre) }
