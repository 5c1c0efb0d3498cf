package quote

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

// Share is a part of a whole in millionths: 21 % is 210 000. So every rate
// with up to four decimals of a percent is exact.
type Share int64

// whole is 100 % [source.Geometry].
const whole Share = 1_000_000

var shareForm = regexp.MustCompile(`^(\d{1,4})(?:[.,](\d{1,4}))?\s*%?$`)

// ParseShare reads a percentage: "21 %", "8.1%", or "21" alone. Up to 1000 %.
func ParseShare(text string) (Share, error) {
	parts := shareForm.FindStringSubmatch(strings.TrimSpace(text))
	if parts == nil {
		return 0, fmt.Errorf("%q is not a percentage; write it such as 10 %% or 8.1 %%", text)
	}
	millionths, err := strconv.ParseInt(parts[1]+parts[2]+strings.Repeat("0", 4-len(parts[2])), 10, 64)
	if err != nil || Share(millionths) > 10*whole {
		return 0, fmt.Errorf("%q is over 1000 %%; check it", text)
	}
	return Share(millionths), nil
}

// String gives the percentage: "8.1 %".
func (s Share) String() string {
	return strconv.FormatFloat(float64(s)/1e4, 'f', -1, 64) + " %"
}

// Of returns this share of an amount, rounded to the minor unit, halves away
// from zero.
func (s Share) Of(m Money) Money { return m.times(int64(s), int64(whole)) }

// within returns what of an amount is this share added to the rest: the tax in
// a price that includes it.
func (s Share) within(m Money) Money { return m.times(int64(s), int64(whole+s)) }

// Fraction is the share as a part of 1.
func (s Share) Fraction() float64 { return float64(s) / float64(whole) }
