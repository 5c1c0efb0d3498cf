package purchase_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/fabric/purchase"
)

// anyRequest is a known amount within, and well beyond, what the chart covers.
func anyRequest(rt *rapid.T) purchase.ConversionRequest {
	return purchase.ConversionRequest{
		Length:       rapid.Float64Range(100, 8000).Draw(rt, "length"),
		From:         rapid.Float64Range(600, 2000).Draw(rt, "from"),
		To:           rapid.Float64Range(600, 2000).Draw(rt, "to"),
		OneWay:       rapid.Bool().Draw(rt, "one way"),
		SleevesInOne: rapid.Bool().Draw(rt, "sleeves in one"),
	}
}

func converted(rt *rapid.T, request purchase.ConversionRequest) purchase.Conversion {
	out, err := purchase.Convert(request)
	require.NoError(rt, err)
	return out
}

// shopStep is an eighth of a yard, mm.
const shopStep = yard / 8

func TestConvertNeverAsksForMoreThanIsKnownToBeEnough(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		request := anyRequest(rt)
		request.OneWay = false
		request.To = max(request.From, request.To)
		found := converted(rt, request)
		assert.LessOrEqual(rt, found.Length, request.Length)
		assert.LessOrEqual(rt, request.Purchase(found, shopStep), request.Length)
		request.To = request.From
		assert.InDelta(rt, request.Length, converted(rt, request).Length, 1e-6, "the same width")
	})
}

func TestConvertIsMonotone(t *testing.T) {
	const noise = 1e-6
	rapid.Check(t, func(rt *rapid.T) {
		request := anyRequest(rt)
		found := converted(rt, request)
		longer, wider, fromWider := request, request, request
		longer.Length += rapid.Float64Range(0, 500).Draw(rt, "more")
		wider.To += rapid.Float64Range(0, 500).Draw(rt, "wider")
		fromWider.From += rapid.Float64Range(0, 500).Draw(rt, "from wider")
		assert.GreaterOrEqual(rt, converted(rt, longer).Length, found.Length-noise, "a longer known length")
		assert.LessOrEqual(rt, converted(rt, wider).Length, found.Length+noise, "a wider cloth")
		assert.LessOrEqual(rt, wider.Purchase(converted(rt, wider), shopStep), request.Purchase(found, shopStep)+noise)
		napped, plain := request, request
		napped.OneWay, plain.OneWay = true, false
		most := converted(rt, plain).Length + yard/4
		assert.GreaterOrEqual(rt, converted(rt, napped).Length, converted(rt, plain).Length-noise)
		assert.LessOrEqual(rt, converted(rt, napped).Length, most+noise, "the extra for nap once")
	})
}

// A little more cloth never comes to much more in another width: by the chart
// each mm comes to 4 at most, and by area on either side of it to the ratio of
// the widths there with the margin, which within these widths is less than 2.5.
func TestConvertMakesNoJumps(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		request := anyRequest(rt)
		before := converted(rt, request).Length
		request.Length++
		assert.LessOrEqual(rt, converted(rt, request).Length-before, 10.0)
		before = converted(rt, request).Length
		request.To -= 0.01
		assert.LessOrEqual(rt, converted(rt, request).Length-before, 1.0, "a hair narrower")
	})
}

// What the screen showed as a jump: 3 1/8 yd for 5 yd, 3 7/8 yd for 5 1/8 yd.
func TestConvertGoesOnBeyondTheChart(t *testing.T) {
	request := purchase.ConversionRequest{Length: 5 * yard, From: 35 * 25.4, To: 60 * 25.4}
	inside := convert(t, request)
	request.Length = 5.125 * yard
	beyond := convert(t, request)
	assert.Equal(t, purchase.ByChart, inside.Basis)
	assert.Equal(t, purchase.ByArea, beyond.Basis)
	assert.Less(t, beyond.Length-inside.Length, yard/8)
}
