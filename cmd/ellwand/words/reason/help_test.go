package reason

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/remnant"
	"ellwand/pieces/measure"
)

func TestHelp(t *testing.T) {
	say := func(mm float64) string { return measure.Length(mm).Format(measure.Centimetre) }
	for want, gives := range map[string][]remnant.Given{
		"lay it open instead of folded":                                    {{Of: remnant.LaidOpen}},
		"lower every seam allowance that is wider to 1 cm (the hems stay)": {{Of: remnant.LowerAllowances, Least: 10}},
		"turn up 1.5 cm less of hem (never under 2 cm)": {
			{Of: remnant.NarrowerHems, Least: 20, By: 15, Most: 30}},
		"put the band on the cross grain":                             {of(remnant.OnCrossGrain, "band")},
		"piece the band: cut it in two with a seam across its middle": {of(remnant.CutInTwo, "band")},
		"cut the back in two halves with a seam instead of the fold":  {of(remnant.SeamForFold, "back")},
		"cut the hem band and the facing from another cloth":          {of(remnant.OtherCloth, "hem band", "facing")},
		"let the pieces lie both ways of the nap (look at it in daylight first: it may show)": {
			{Of: remnant.NapIgnored}},
		"let each garment have the nap its own way (their colours will differ a little)": {{Of: remnant.NapPerGarment}},
		"shorten the skirt of the dress by 3 cm": {
			{Of: remnant.Shorter, Garment: "dress", Part: "skirt", By: 30, Most: 100}},
		"shorten the apron by 3 cm":  {{Of: remnant.Shorter, Garment: "apron", By: 30, Most: 100}},
		"make size 38 instead of 40": {{Of: remnant.SmallerSize, Size: "38", Former: "40"}},
		"lay and chalk it to the millimetre, so that hand laying takes nothing, and find that both cut ends run along a " +
			"thread, and need no straightening": {{Of: remnant.CloseLaying}, {Of: remnant.StraightEnds}},
	} {
		assert.Equal(t, want, Help(gives, say))
	}
}

func of(what remnant.Sacrifice, pieces ...string) remnant.Given {
	return remnant.Given{Of: what, Pieces: pieces}
}
