package purchase

import (
	"fmt"

	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// ConvertByArea gives the length of cloth of another width that has the same
// area. All in mm; widths positive. It is the first guess for a width that
// was not laid out, no more: a lay must be solved to be sure.
func ConvertByArea(length, fromWidth, toWidth float64) (float64, error) {
	switch {
	case !cloth.IsLength(length):
		return 0, fmt.Errorf("the length is %s; it cannot be negative", centimetres(length))
	case !cloth.IsLength(fromWidth) || fromWidth == 0 || !cloth.IsLength(toWidth) || toWidth == 0:
		return 0, fmt.Errorf("the widths are %s and %s; both must be more than 0", centimetres(fromWidth),
			centimetres(toWidth))
	}
	return length * fromWidth / toWidth, nil
}

func centimetres(mm float64) string { return measure.Length(mm).Format(measure.Centimetre) }
