package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// What no lay can do without is said as the shop counts, and never too much.
func TestLeastIsSaidAsTheShopCounts(t *testing.T) {
	for _, c := range []struct {
		unit     measure.Unit
		step, mm float64
		want     string
	}{
		{measure.Inch, eighth, 1786, "1 7/8 yd"},
		{measure.Inch, eighth, 914.4, "1 yd"},
		{measure.Inch, eighth, 100, ""},
		{measure.Centimetre, 100, 1786, "1.78 m"},
		{measure.Centimetre, eighth, 1786, "1 7/8 yd"},
	} {
		work := &job.Work{Unit: c.unit}
		assert.Equal(t, c.want, LeastInStore(work, cloth.Cloth{PurchaseStep: c.step}, c.mm))
	}
}
