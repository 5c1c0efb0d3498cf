package store

import (
	"crypto/hmac"
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"os"
	"path/filepath"
)

// signer vouches for what this user's program has kept: that a search was made to its
// end, and found no shorter layout. Nothing else in an entry can tell that, since a
// layout from elsewhere, though sound, may be longer than what the search would find.
type signer []byte

// keyLength of the secret, bytes: that of the digest [source.OwnChoice].
const keyLength = sha256.Size

// signerIn reads the secret of a folder, or makes one. The second of two processes that
// make one at once takes that of the first. Without one nothing kept is believed.
func signerIn(folder string) signer {
	path := filepath.Join(folder, "secret")
	if secret, err := readAtMost(path, keyLength); err == nil && len(secret) == keyLength {
		return secret
	}
	if os.MkdirAll(folder, 0o700) != nil {
		return nil
	}
	secret := make([]byte, keyLength)
	_, _ = rand.Read(secret) // it never fails: see its documentation
	file, err := os.CreateTemp(folder, ".new-*")
	if err != nil {
		return nil
	}
	defer os.Remove(file.Name())
	_, err = file.Write(secret)
	if closed := file.Close(); err != nil || closed != nil {
		return nil
	}
	if info, err := os.Lstat(path); err == nil && (!info.Mode().IsRegular() || info.Size() != keyLength) {
		_ = os.Remove(path) // spoilt: whatever it signed is of no use any more
	}
	_ = os.Link(file.Name(), path) // fails where another process was first
	secret, err = readAtMost(path, keyLength)
	if err != nil || len(secret) != keyLength {
		return nil
	}
	return secret
}

// sign everything of an entry but its signature.
func (s signer) sign(in file) string {
	in.Signature = ""
	text, err := json.Marshal(in)
	if err != nil {
		return ""
	}
	sum := hmac.New(sha256.New, s)
	sum.Write(text)
	return hex.EncodeToString(sum.Sum(nil))
}

func (s signer) hasSigned(in file) bool {
	return len(s) > 0 && hmac.Equal([]byte(in.Signature), []byte(s.sign(in)))
}
