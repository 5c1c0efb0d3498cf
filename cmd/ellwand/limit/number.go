package limit

import (
	"fmt"
	"strconv"
)

// Number is a whole number on the command line, from 0 to its limit.
type Number struct {
	into *int
	most Limit
}

// NumberOf reads a whole number from 0 to a limit into a place.
func NumberOf(into *int, most Limit) *Number { return &Number{into, most} }

// String is the number as it stands.
func (n *Number) String() string {
	if n.into == nil { // as when the usual value is looked for
		return "0"
	}
	return strconv.Itoa(*n.into)
}

// Type names what is to be written.
func (n *Number) Type() string { return "number" }

// Set reads the number.
func (n *Number) Set(text string) error {
	value, err := strconv.Atoi(text)
	switch {
	case err != nil && !isWhole(text):
		return fmt.Errorf("write a whole number, such as 2")
	case err == nil && value < 0 || text[0] == '-':
		return fmt.Errorf("it cannot be negative")
	case err != nil || value > n.most.Most():
		return fmt.Errorf("it %s", n.most.Sentence())
	}
	*n.into = value
	return nil
}

// Seed is a seed of random numbers on the command line: any whole number from 0.
type Seed uint64

// String is the number as it stands.
func (s *Seed) String() string { return strconv.FormatUint(uint64(*s), 10) }

// Type names what is to be written.
func (s *Seed) Type() string { return "number" }

// Set reads the number.
func (s *Seed) Set(text string) error {
	value, err := strconv.ParseUint(text, 10, 64)
	switch {
	case err != nil && !isWhole(text):
		return fmt.Errorf("write a whole number, such as 7")
	case err != nil && text[0] == '-':
		return fmt.Errorf("a seed cannot be negative; write a whole number from 0 on, such as 7")
	case err != nil:
		return fmt.Errorf("it is too large for a seed; write a smaller whole number, such as 7")
	}
	*s = Seed(value)
	return nil
}

// isWhole reports whether a text is a whole number, of whatever size.
func isWhole(text string) bool {
	digits := 0
	for i, r := range text {
		switch {
		case r >= '0' && r <= '9':
			digits++
		case i > 0 || r != '-' && r != '+':
			return false
		}
	}
	return digits > 0
}
