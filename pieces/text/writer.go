package text

import "io"

// Writer hands on clean Lines. What is written at once must hold whole escape
// sequences, as what fmt prints does.
func Writer(to io.Writer) io.Writer { return cleaner{to} }

type cleaner struct{ to io.Writer }

func (c cleaner) Write(given []byte) (int, error) {
	if _, err := io.WriteString(c.to, Lines(string(given))); err != nil {
		return 0, err
	}
	return len(given), nil
}
