package app

import (
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces/found"
	"ellwand/pieces/measure"
)

// ParseDistance reads a distance that was measured in a photo: two places in pixels from
// its upper left corner, and their distance: "120,80 1500,90 = 60cm". It reports false where
// that cannot be read.
func ParseDistance(text string) (found.Distance, bool) {
	places, length, _ := strings.Cut(text, "=")
	ends := strings.Fields(places)
	mm, err := measure.Parse(length, measure.Centimetre)
	if err != nil || mm <= 0 || len(ends) != 2 {
		return found.Distance{}, false
	}
	from, isFrom := pixel(ends[0])
	to, isTo := pixel(ends[1])
	return found.Distance{From: from, To: to, Length: float64(mm)}, isFrom && isTo
}

func pixel(text string) (orb.Point, bool) {
	across, down, _ := strings.Cut(text, ",")
	x, err := strconv.ParseFloat(across, 64)
	y, wrong := strconv.ParseFloat(down, 64)
	const most = 1e5 // pixels
	return orb.Point{x, y}, err == nil && wrong == nil && x >= 0 && y >= 0 && x <= most && y <= most
}
