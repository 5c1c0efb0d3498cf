// Package quote reckons what cloth costs and what a garment is offered for:
// how much to buy and what that rests on, which offer of a cloth is the
// cheapest, and the quote that a client is handed, as text, JSON or a PDF.
//
// Money is whole minor units of one currency, never a fraction; each price is
// rounded once, where it becomes a line. Lengths are millimetres.
package quote

import (
	"fmt"
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"github.com/bojanz/currency"
)

// Money is an amount in minor units of the currency of its quote: cents of a
// euro, fils of a dinar, whole yen.
type Money int64

// mostMoney keeps sums far from overflow, however many things are bought: 10^10
// minor units in one price [source.OwnChoice].
const mostMoney = 10_000_000_000

// Currency is a currency of ISO 4217. Make it with ParseCurrency.
type Currency struct {
	code     string
	decimals int
}

// ParseCurrency reads a code of ISO 4217, such as EUR, in small or capital
// letters.
func ParseCurrency(code string) (Currency, error) {
	code = strings.ToUpper(strings.TrimSpace(code))
	digits, known := currency.GetDigits(code)
	if !known {
		return Currency{}, fmt.Errorf("%q is not a currency; write its three letters of ISO 4217, such as EUR, GBP, USD "+
			"or JPY", code)
	}
	return Currency{code: code, decimals: int(digits)}, nil
}

// Code is the code of ISO 4217: "EUR".
func (c Currency) Code() string { return c.code }

// Decimals of the currency: 0, 2 or 3 (4 in a few units of account).
func (c Currency) Decimals() int { return c.decimals }

// The forms of an amount; thousands may be set apart by spaces.
var moneyForm = regexp.MustCompile(`^(\d{1,3}(?: \d{3})+|\d{1,14})(?:[.,](\d{1,4}))?$`)

// Parse reads an amount such as "12.50", "12,50" or "1 250": not negative,
// with no more decimals than the currency has. The currency's code may stand
// before or after it.
func (c Currency) Parse(text string) (Money, error) {
	plain := strings.TrimSpace(strings.NewReplacer("\u00a0", " ", "\u202f", " ").Replace(text))
	plain = strings.TrimSpace(strings.TrimSuffix(strings.TrimPrefix(plain, c.code), c.code))
	parts := moneyForm.FindStringSubmatch(plain)
	if parts == nil {
		return 0, fmt.Errorf("%q is not an amount; write it without thousands, such as %s", text, c.example())
	}
	whole, decimals := strings.ReplaceAll(parts[1], " ", ""), parts[2]
	if len(decimals) > c.decimals {
		if c.decimals == 0 {
			return 0, fmt.Errorf("%q has decimals, and %s has none; write it such as %s", text, c.code, c.example())
		}
		return 0, fmt.Errorf("%q has %d decimals, and %s has %d; write it such as %s (without thousands)", text,
			len(decimals), c.code, c.decimals, c.example())
	}
	minor, err := strconv.ParseInt(whole+decimals+strings.Repeat("0", c.decimals-len(decimals)), 10, 64)
	if err != nil || minor > mostMoney {
		return 0, fmt.Errorf("%q is more than any quote comes to; check it", text)
	}
	return Money(minor), nil
}

func (c Currency) example() string { return c.Format(Money(1250)) }

// Format prints an amount with the currency's decimals after a point and the
// thousands set apart by hard spaces, as ISO 80000-1 has it, without the code:
// "1 250.00".
func (c Currency) Format(m Money) string {
	sign, digits := "", strconv.FormatInt(int64(m), 10)
	if m < 0 {
		sign, digits = "-", digits[1:]
	}
	if missing := c.decimals + 1 - len(digits); missing > 0 {
		digits = strings.Repeat("0", missing) + digits
	}
	whole, rest := digits[:len(digits)-c.decimals], digits[len(digits)-c.decimals:]
	var groups []string
	for len(whole) > 3 {
		groups = append([]string{whole[len(whole)-3:]}, groups...)
		whole = whole[:len(whole)-3]
	}
	text := sign + strings.Join(append([]string{whole}, groups...), "\u00a0")
	if c.decimals > 0 {
		text += "." + rest
	}
	return text
}

// Plain prints an amount for programs: "1250.00".
func (c Currency) Plain(m Money) string {
	return strings.ReplaceAll(c.Format(m), "\u00a0", "")
}

// Say prints an amount with its code: "1 250.00 EUR".
func (c Currency) Say(m Money) string { return c.Format(m) + "\u00a0" + c.code }

// times returns m * by / over, rounded to the nearest minor unit, halves away
// from zero, as shops and tax offices round. over is positive.
func (m Money) times(by, over int64) Money {
	product := new(big.Int).Mul(big.NewInt(int64(m)), big.NewInt(by))
	double := new(big.Int).Lsh(new(big.Int).Abs(product), 1)
	double.Add(double, big.NewInt(over))
	quotient := double.Quo(double, big.NewInt(2*over)).Int64()
	if product.Sign() < 0 {
		quotient = -quotient
	}
	return Money(quotient)
}

// Split divides an amount by weights, to the last minor unit: each part is
// rounded down, and what is left goes, one unit each, to the parts that lost
// most (largest remainder; of equals the first). Weights are not negative;
// when all are 0 the parts are as equal as can be.
func (m Money) Split(weights []int64) []Money {
	total := int64(0)
	for _, w := range weights {
		total += w
	}
	if total == 0 {
		equal := make([]int64, len(weights))
		for i := range equal {
			equal[i] = 1
		}
		weights, total = equal, int64(len(weights))
	}
	out, lost := make([]Money, len(weights)), make([]*big.Int, len(weights))
	left := int64(m)
	for i, w := range weights {
		product := new(big.Int).Mul(big.NewInt(int64(m)), big.NewInt(w))
		quotient, remainder := new(big.Int).DivMod(product, big.NewInt(total), new(big.Int))
		out[i], lost[i] = Money(quotient.Int64()), remainder
		left -= quotient.Int64()
	}
	for ; left > 0; left-- {
		most := 0
		for i := range lost {
			if lost[i].Cmp(lost[most]) > 0 {
				most = i
			}
		}
		out[most]++
		lost[most] = big.NewInt(-1)
	}
	return out
}
