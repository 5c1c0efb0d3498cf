package measure

import (
	"fmt"
	"math/big"
)

// inchesPerFoot: a foot is a third of a yard [source.YardAndPound].
const inchesPerFoot = 12

// parseFeet reads feet and inches, as bodies are measured in some places. The
// parts are those of feetForm: a sign, feet, inches.
func parseFeet(text string, parts []string) (Length, error) {
	feet, err := parseUnsigned(parts[2])
	if err != nil {
		return 0, fmt.Errorf("%q is not a length: %w", text, err)
	}
	inches := new(big.Rat)
	if parts[3] != "" {
		if !feet.IsInt() {
			return 0, fmt.Errorf("%q is not a length: the feet before inches must be a whole number; %s", text,
				expected)
		}
		if inches, err = parseUnsigned(parts[3]); err != nil {
			return 0, fmt.Errorf("%q is not a length: %w", text, err)
		}
		if inches.Cmp(big.NewRat(inchesPerFoot, 1)) >= 0 {
			return 0, fmt.Errorf("%q is not a length: a foot has 12 inches; write the inches after it below 12", text)
		}
	}
	inches.Add(inches, feet.Mul(feet, big.NewRat(inchesPerFoot, 1)))
	mm, _ := inches.Mul(inches, big.NewRat(Inch.tenths(), 10)).Float64()
	if mm > longest {
		return 0, fmt.Errorf("%q is not a length: it is longer than 100 km; %s", text, expected)
	}
	if parts[1] != "" {
		mm = -mm
	}
	return Length(mm), nil
}
