package draft_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/draft"
	"ellwand/draft/construct"
	"ellwand/draft/internal/variants"
)

// A body of any mix: bust 70 to 160, waist 50 to 150, hip 75 to 165 cm, each by
// itself; the height given or not; and of the other measurements each given or
// not, within 15 % of what the women's table has in the size next to that bust,
// or below the waist to that hip.
func anyBody(t *rapid.T) draft.Body {
	body := draft.Body{
		draft.BustGirth:  rapid.Float64Range(700, 1600).Draw(t, "bust"),
		draft.WaistGirth: rapid.Float64Range(500, 1500).Draw(t, "waist"),
		draft.HipGirth:   rapid.Float64Range(750, 1650).Draw(t, "hip"),
	}
	if rapid.Bool().Draw(t, "with height") {
		body[draft.Height] = rapid.Float64Range(1450, 1950).Draw(t, "height")
	}
	upper, lower := sizeNext(body, draft.BustGirth), sizeNext(body, draft.HipGirth)
	for _, name := range draft.Measurements() {
		usual, ok := upper[name]
		if name == draft.WaistToHip || name == draft.BodyRise || name == draft.OutsideLegLength {
			usual = lower[name]
		}
		if _, given := body[name]; given || !ok || !rapid.Bool().Draw(t, "with "+string(name)) {
			continue
		}
		body[name] = usual * rapid.Float64Range(0.85, 1.15).Draw(t, string(name))
	}
	return body
}

// sizeNext is the size of the women's table that is next to a girth.
func sizeNext(body draft.Body, girth draft.Measurement) draft.Body {
	var next draft.Body
	for _, name := range draft.Sizes("women") {
		of, err := draft.Size("women", name)
		if err == nil && (next == nil || math.Abs(of[girth]-body[girth]) < math.Abs(next[girth]-body[girth])) {
			next = of
		}
	}
	return next
}

// Every block in every variant either drafts cleanly on any body (simple
// outlines, positive darts, seams that match, no loop in a curve), or refuses
// with a sentence that names the measurement that cannot be.
func TestAnyBodyInEveryBlock(t *testing.T) {
	t.Parallel()
	drafted, all := 0, 0
	for name, request := range variants.All() {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				request.Body = anyBody(t)
				result, err := draft.Draft(request)
				all++
				if err != nil {
					assert.True(t, namesMeasurement(err), "the refusal names no measurement: %s", err)
					return
				}
				drafted++
				checkClean(t, result)
			})
		})
	}
	t.Logf("%d of %d drafted", drafted, all)
	assert.Greater(t, drafted, all/2)
}

func namesMeasurement(err error) bool {
	for _, name := range draft.Measurements() {
		if strings.Contains(err.Error(), string(name)) {
			return true
		}
	}
	return false
}

func checkClean(t require.TestingT, r draft.Result) {
	for _, p := range r.Pieces {
		require.NoError(t, p.Check(), p.Name)
		_, err := p.CuttingOutline(0.1)
		require.NoError(t, err, p.Name)
		checkOutline(t, p)
		for _, d := range p.Darts {
			assert.Greater(t, construct.Distance(d.Start, d.End), 2.0, "%s: %s", p.Name, d.Name)
			assert.InDelta(t, construct.Distance(d.Start, d.Apex), construct.Distance(d.End, d.Apex), 0.01,
				"%s: the legs of %s", p.Name, d.Name)
		}
	}
	for _, row := range r.Truing.Rows {
		// The neck of the proportional draft goes with the bust: on a body whose
		// own does not, the draft warns that it stands off.
		if row.Seam == "neck" && !row.InRange {
			assert.Contains(t, row.Normal.String(), "as the neck is a proportion of the bust")
			assert.NotEmpty(t, r.Warnings)
			continue
		}
		assert.True(t, row.InRange, "%s: %s %.1f, %s %.1f: %s", row.Seam, row.Of, row.OfLength, row.Against,
			row.AgainstLength, row.Verdict)
	}
}
