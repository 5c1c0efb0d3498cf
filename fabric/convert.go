package fabric

import "fmt"

// ConvertByArea gives the length of cloth of another width that has the same
// area. All in mm; widths positive. It is the first guess for a width that
// was not laid out, no more: a lay must be solved to be sure.
func ConvertByArea(length, fromWidth, toWidth float64) (float64, error) {
	switch {
	case !isLength(length):
		return 0, fmt.Errorf("the length is %s; it cannot be negative", say(length))
	case !isLength(fromWidth) || fromWidth == 0 || !isLength(toWidth) || toWidth == 0:
		return 0, fmt.Errorf("the widths are %s and %s; both must be more than 0", say(fromWidth), say(toWidth))
	}
	return length * fromWidth / toWidth, nil
}
