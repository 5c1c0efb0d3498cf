package draft

import (
	"errors"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/construct"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/straightcut"
	"ellwand/draft/trousers"
	"ellwand/pieces/measure"
	"ellwand/testdata/sample"
)

// statedLimits finds the lengths that a refusal says would do.
var statedLimits = regexp.MustCompile(`(?:ask for|must be) ([0-9 /.]+ (?:cm|in))(?: to ([0-9 /.]+ (?:cm|in)))?|; ` +
	`([0-9 /.]+ (?:cm|in)) is the most`)

// A length that a refusal asks for must itself be accepted, in the unit of its
// words: rounded to the nearest it could be refused again. The ordinary run takes each
// size in one unit.
func TestStatedLimitsAreAccepted(t *testing.T) {
	t.Parallel()
	parts := func(o part.Options, set func(*part.Options, float64)) func(*Request, float64) {
		return func(r *Request, mm float64) {
			set(&o, mm)
			r.Parts = []part.Options{o}
		}
	}
	depth := func(o *part.Options, mm float64) { o.Depth = mm }
	length := func(o *part.Options, mm float64) { o.Length = mm }
	lower := func(band part.Kind, set func(*Request, float64)) func(*Request, float64) {
		return func(r *Request, mm float64) {
			r.Bodice, r.Sleeve, r.Parts = nil, nil, []part.Options{{Kind: band}}
			set(r, mm)
		}
	}
	for name, c := range map[string]struct {
		ask    func(*Request, float64)
		values []float64
	}{
		"flat collar":    {parts(part.Options{Kind: part.FlatCollar}, depth), []float64{200}},
		"neck facing":    {parts(part.Options{Kind: part.NeckFacing}, depth), []float64{200}},
		"armhole facing": {parts(part.Options{Kind: part.ArmholeFacing}, depth), []float64{200}},
		"combined facing": {func(r *Request, mm float64) {
			r.Sleeve, r.Parts = nil, []part.Options{{Kind: part.CombinedFacing, Depth: mm}}
		}, []float64{300}},
		"shirt collar": {parts(part.Options{Kind: part.ShirtCollar}, depth), []float64{31}},
		"stand": {parts(part.Options{Kind: part.ShirtCollar, Depth: 80},
			func(o *part.Options, mm float64) { o.Stand = mm }), []float64{5, 90}},
		"mandarin collar": {parts(part.Options{Kind: part.MandarinCollar}, depth), []float64{5, 90}},
		"placket":         {parts(part.Options{Kind: part.SleevePlacket}, length), []float64{500}},
		"neck":            {func(r *Request, mm float64) { r.Bodice = &bodice.Options{NeckWiden: mm} }, []float64{105}},
		"neck beside dart": {func(r *Request, mm float64) {
			r.Bodice, r.Parts = &bodice.Options{NeckWiden: mm, Shaping: bodice.ShoulderDart}, nil
		}, []float64{70}},
		"front neck": {func(r *Request, mm float64) { r.Bodice = &bodice.Options{FrontNeckDrop: mm} },
			[]float64{300}},
		"back neck": {func(r *Request, mm float64) { r.Bodice = &bodice.Options{BackNeckDrop: mm} },
			[]float64{300}},
		"yoke": {func(r *Request, mm float64) { r.Bodice = &bodice.Options{Yoke: mm} }, []float64{5, 300}},
		"below the waist": {func(r *Request, mm float64) { r.Bodice = &bodice.Options{BelowWaist: mm} },
			[]float64{100, 950}},
		"extension": {func(r *Request, mm float64) {
			r.Bodice = &bodice.Options{FrontOpening: true,
				Extension: mm}
		}, []float64{2, 60}},
		"head height":   {func(r *Request, mm float64) { r.Sleeve = &sleeve.Options{HeadHeight: mm} }, []float64{10}},
		"sleeve length": {func(r *Request, mm float64) { r.Sleeve = &sleeve.Options{Length: mm} }, []float64{100}},
		"cap": {func(r *Request, mm float64) {
			r.Sleeve,
				r.Parts = &sleeve.Options{Style: sleeve.Cap, Length: mm}, nil
		}, []float64{30, 400}},
		"two-piece wrist": {func(r *Request, mm float64) {
			r.Sleeve, r.Parts = &sleeve.Options{Style: sleeve.TwoPiece, WristWidth: mm}, nil
		}, []float64{100, 600}},
		"skirt length": {lower(part.Waistband, func(r *Request, mm float64) { r.Skirt = &skirt.Options{Length: mm} }),
			[]float64{200, 1700}},
		"lowered skirt": {lower(part.ShapedWaistband,
			func(r *Request, mm float64) { r.Skirt = &skirt.Options{Length: mm} }), []float64{200, 1700}},
		"flare": {lower(part.Waistband, func(r *Request,
			mm float64) {
			r.Skirt = &skirt.Options{Shape: skirt.ALine, Flare: mm}
		}), []float64{400}},
		"panel": {lower(part.Waistband, func(r *Request,
			mm float64) {
			r.Skirt = &skirt.Options{Shape: skirt.Tiered, PanelWidth: mm}
		}), []float64{100}},
		"pocket bag": {lower(part.PocketBag, func(r *Request, mm float64) {
			r.Skirt, r.Parts[0].Length = &skirt.Options{}, mm
		}), []float64{50, 900}},
		"trouser length": {lower(part.Waistband,
			func(r *Request, mm float64) { r.Trousers = &trousers.Options{Length: mm} }), []float64{200, 1500}},
		"lowered trousers": {lower(part.ShapedWaistband,
			func(r *Request, mm float64) { r.Trousers = &trousers.Options{Length: mm} }), []float64{200, 1500}},
		"elastic waist": {func(r *Request, mm float64) {
			r.Bodice, r.Sleeve, r.Parts, r.Trousers = nil, nil, nil, &trousers.Options{Opening: trousers.ElasticWaist,
				WaistEase: mm}
		}, []float64{60}},
		"hips of an elastic waist": {func(r *Request, mm float64) {
			r.Bodice, r.Sleeve, r.Parts, r.Trousers = nil, nil, nil, &trousers.Options{Opening: trousers.ElasticWaist,
				HipEase: mm}
		}, []float64{20}},
		"hem width": {lower(part.Waistband, func(r *Request,
			mm float64) {
			r.Trousers = &trousers.Options{HemWidth: mm}
		}), []float64{1500}},
		"kaftan": {lower(part.Belt, func(r *Request, mm float64) {
			r.StraightCut = &straightcut.Options{Shape: straightcut.Kaftan, Length: mm}
		}), []float64{100, 3000}},
		"wrapper": {lower(part.Belt, func(r *Request, mm float64) {
			r.StraightCut = &straightcut.Options{Shape: straightcut.Wrapper, Width: mm}
		}), []float64{900}},
		"apron": {lower(part.Belt, func(r *Request, mm float64) {
			r.StraightCut = &straightcut.Options{Shape: straightcut.Apron, Width: mm}
		}), []float64{200}},
		"bag": {lower(part.Belt, func(r *Request,
			mm float64) {
			r.StraightCut = &straightcut.Options{Shape: straightcut.Bag, Width: mm}
		}), []float64{50, 2000}},
	} {
		for _, value := range c.values {
			for i, unit := range []measure.Unit{measure.Centimetre, measure.Inch} {
				for k, number := range []string{"6", "12", "18"} {
					if (i+k)%2 == 1 && !sample.Long() {
						continue
					}
					request := blouse(size(t, "women", number))
					c.ask(&request, value)
					_, err := Draft(request)
					var refusal construct.Refusal
					require.True(t, errors.As(err, &refusal), "%s %g is not refused: %v", name, value, err)
					found := statedLimits.FindStringSubmatch(refusal.In(unit))
					require.NotEmpty(t, found, "%s: %s", name, refusal.In(unit))
					for _, text := range found[1:] {
						if text == "" {
							continue
						}
						limit, err := measure.Parse(text, unit)
						require.NoError(t, err)
						c.ask(&request, float64(limit))
						_, err = Draft(request)
						assert.NoError(t, err, "%s: %s was asked for", name, text)
					}
				}
			}
		}
	}
}
