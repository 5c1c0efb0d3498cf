package measure

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSystem(t *testing.T) {
	for unit, want := range map[Unit]System{Millimetre: Metric, Centimetre: Metric, Metre: Metric, Inch: Imperial,
		Yard: Imperial} {
		assert.Equal(t, want, unit.System(), unit.String())
	}
	assert.Equal(t, Metric, SystemOf(false))
	assert.Equal(t, Imperial, SystemOf(true))
	assert.Equal(t, Centimetre, Metric.Unit())
	assert.Equal(t, Inch, Imperial.Unit())
	assert.Equal(t, 1.0, Metric.Step())
	assert.Equal(t, 1.5875, Imperial.Step())
	for _, c := range []struct {
		mm                         float64
		size, cloth, purchase      string
		sizeIn, clothIn, purchase8 string
	}{
		{415, "41.5 cm", "0.42 m", "0.42 m", "16 5/16 in", "16 5/16 in", "1/2 yd"},
		{1350, "135 cm", "1.35 m", "1.35 m", "53 1/8 in", "53 1/8 in", "1 1/2 yd"},
		{1350.5, "135.1 cm", "1.35 m", "1.36 m", "53 3/16 in", "53 3/16 in", "1 1/2 yd"},
		{914.4, "91.4 cm", "0.91 m", "0.92 m", "36 in", "36 in", "1 yd"},
		{1028.8, "102.9 cm", "1.03 m", "1.03 m", "40 1/2 in", "40 1/2 in", "1 1/4 yd"}, // 1 1/8 yd is 1028.7 mm
	} {
		assert.Equal(t, c.size, Metric.Size(c.mm))
		assert.Equal(t, c.cloth, Metric.Cloth(c.mm))
		assert.Equal(t, c.purchase, Metric.Purchase(c.mm))
		assert.Equal(t, c.sizeIn, Imperial.Size(c.mm))
		assert.Equal(t, c.clothIn, Imperial.Cloth(c.mm))
		assert.Equal(t, c.purchase8, Imperial.Purchase(c.mm))
	}
}

// How far something may be out is never said to be less.
func TestAccuracy(t *testing.T) {
	for mm, want := range map[float64]string{0.31: "0.4 mm", 1.16: "1.2 mm", 1.2: "1.2 mm", 2: "0.2 cm", 2.2: "0.3 cm"} {
		assert.Equal(t, want, Metric.Accuracy(mm), "%g", mm)
	}
	assert.Equal(t, "1/8 in", Imperial.Accuracy(2))
	assert.Equal(t, "1/16 in", Imperial.Accuracy(0.3))
}
