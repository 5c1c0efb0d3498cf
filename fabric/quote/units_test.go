package quote

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
)

// A purchase is rounded up in both systems, each by its own step.
func TestInBothSystems(t *testing.T) {
	tests := []struct {
		name                     string
		step, length, metric, yd float64
	}{
		{"metric step", 100, 1230, 1300, 1371.6}, // 1 1/2 yd, since 1 3/8 yd is 1257.3 mm
		{"quarter metre", 250, 1230, 1250, 1371.6},
		{"eighth of a yard", 914.4 / 8, 1230, 1300, 1257.3},
		{"quarter of a yard", 914.4 / 4, 1260, 1300, 1371.6},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := cloth.Cloth{PurchaseStep: tt.step}
			buy := tt.metric
			if SoldInYards(c) {
				buy = tt.yd
			}
			metric, yards := InBothSystems(c, tt.length+c.Straighten, buy)
			assert.InDelta(t, tt.metric, metric, 1e-6)
			assert.GreaterOrEqual(t, yards, tt.length)
			assert.Less(t, yards, tt.length+914.4/4+1e-6)
		})
	}
}
